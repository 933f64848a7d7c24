-- Everything is an integer. STRICT tables refuse the binary fraction that an
-- overflowing product would turn into.

-- The release as published.
CREATE TABLE nutrient (
    number INTEGER PRIMARY KEY,
    scale INTEGER NOT NULL           -- 1, 10, 100, 1000: printed with 0 to 3 decimals
) STRICT;
CREATE TABLE value (                 -- per 100 g of edible food
    food INTEGER NOT NULL,
    nutrient INTEGER NOT NULL,
    thousandths INTEGER NOT NULL,
    PRIMARY KEY (food, nutrient)
) STRICT, WITHOUT ROWID;
CREATE TABLE measure (               -- so many of the unit weigh so much
    food INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    amount_thousandths INTEGER NOT NULL,
    words TEXT NOT NULL,
    gram_hundredths INTEGER NOT NULL,
    PRIMARY KEY (food, seq)
) STRICT, WITHOUT ROWID;

-- NIST Handbook 44 (Appendix C): the avoirdupois pound is 0.453 592 37 kg
-- exactly, the ounce a sixteenth of it.
CREATE TABLE mass_unit (
    name TEXT PRIMARY KEY,
    grams_num INTEGER NOT NULL,
    grams_den INTEGER NOT NULL
) STRICT;
INSERT INTO mass_unit VALUES
    ('g', 1, 1), ('kg', 1000, 1), ('oz', 45359237, 1600000), ('lb', 45359237, 100000);

-- What is asked.
CREATE TABLE recipe (
    id INTEGER PRIMARY KEY,
    servings INTEGER NOT NULL CHECK (25200 % servings = 0)
) STRICT;
CREATE TABLE line (
    recipe INTEGER NOT NULL,
    food INTEGER,                    -- NULL: not known which
    count_num INTEGER,               -- NULL: not known how much
    count_den INTEGER,
    seq INTEGER,                     -- one of the food's measures, or
    unit TEXT                        -- a unit of mass
) STRICT;
CREATE TABLE week (
    id INTEGER PRIMARY KEY,
    meals INTEGER NOT NULL
) STRICT;
CREATE TABLE choice (
    week INTEGER NOT NULL,
    recipe INTEGER NOT NULL,
    planned INTEGER NOT NULL
) STRICT;

-- A line's mass in units of 1/57600000 g, of which ounces, thirds and ninths
-- are whole multiples.
CREATE TABLE weighed (
    recipe INTEGER NOT NULL,
    food INTEGER,
    grains INTEGER,
    remainder INTEGER CHECK (remainder = 0)
) STRICT;

-- Large numbers: a figure is the sum of part × 1000000^place, shared by
-- 5760000000000 × shares. (57600000 for the mass, 1000 for the thousandths,
-- 100 for "per 100 g".)
CREATE TABLE figure (
    id INTEGER PRIMARY KEY,
    owner INTEGER NOT NULL,          -- a recipe or a week
    nutrient INTEGER NOT NULL,       -- 0 for the mass of everything
    kind TEXT NOT NULL,              -- 'amount', or 'mass' whose value is known
    shares INTEGER NOT NULL,
    UNIQUE (owner, nutrient, kind)
) STRICT;
CREATE TABLE part (
    figure INTEGER NOT NULL,
    place INTEGER NOT NULL,
    part INTEGER NOT NULL,
    PRIMARY KEY (figure, place)
) STRICT, WITHOUT ROWID;
CREATE TABLE digit (                 -- the same with every part below 1000000
    figure INTEGER NOT NULL,
    place INTEGER NOT NULL,
    part INTEGER NOT NULL,
    carry INTEGER NOT NULL CHECK (place < 5 OR carry = 0),
    PRIMARY KEY (figure, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE tally (
    owner INTEGER NOT NULL,
    nutrient INTEGER NOT NULL,
    unweighed INTEGER NOT NULL,
    missing INTEGER NOT NULL,
    PRIMARY KEY (owner, nutrient)
) STRICT, WITHOUT ROWID;

-- A figure rounded half away from zero, in units of 1/scale.
CREATE TABLE printed (
    owner INTEGER NOT NULL,
    nutrient INTEGER NOT NULL,
    kind TEXT NOT NULL,
    scale INTEGER NOT NULL,
    rounded INTEGER NOT NULL,
    PRIMARY KEY (owner, nutrient, kind)
) STRICT, WITHOUT ROWID;
