//! Weights and volumes that are stated beside an amount, and contents of
//! containers.

use super::cursor::Cursor;
use super::parse::{ReadAmount, too_fine};
use super::read_unit::ReadUnit;
use super::{Amount, Quantity, QuantityError, Unit};

impl<'t> Cursor<'t> {
    /// Pieces or containers of a stated size: "2 x 400 g", "2 (15 oz) cans",
    /// "4 6-oz", "1/2 of a 10-oz package".
    pub(super) fn of_stated_size(
        &mut self,
        count: &Quantity,
    ) -> Result<Option<ReadAmount<'t>>, QuantityError> {
        let start = self.place();
        let opened = self.is_mark(0, &['(', '[']);
        let times = self.is_mark(0, &['x', '×', '*']) || self.is_word(0, &["x"]);
        self.skip(usize::from(opened || times));
        if !opened && !times {
            self.skip_of_a();
        }
        let each = self.measured(opened)?;
        let Some(mut read) = each else {
            self.back_to(start);
            return Ok(None);
        };
        if opened {
            self.skip(1);
        }
        let typed = self.read_since(start);
        read.quantity = read
            .quantity
            .each_of(count)
            .ok_or_else(|| too_fine(typed))?;
        if read.container.is_none()
            && let Some(named) = self.unit()
        {
            read.container = named.container;
            let counted = Quantity {
                unit: named.unit,
                ..count.clone()
            };
            read.beside = Some(counted);
        }
        Ok(Some(read))
    }

    /// A mass or volume, and within brackets nothing else; the closing
    /// bracket stays unread.
    fn measured(&mut self, bracketed: bool) -> Result<Option<ReadAmount<'t>>, QuantityError> {
        if !self.starts_amount() {
            return Ok(None);
        }
        let Some(mut read) = self.simple_amount()? else {
            return Ok(None);
        };
        if matches!(read.quantity.unit, Unit::Count(_)) {
            return Ok(None);
        }
        if !bracketed {
            return Ok(Some(read));
        }
        self.terms(&mut read)?;
        if self.is_mark(0, &['/']) {
            self.alternative(&mut read)?;
        }
        if self.is_word(0, &["each", "apiece", "per"]) {
            read.each = true;
            self.skip(1);
            if self.unit().is_none() && self.word(0).is_some() {
                self.skip(1);
            }
        } else if self.is_word(0, &["total", "net", "weight", "altogether"]) {
            self.skip(1);
            self.skip(usize::from(self.is_word(0, &["wt", "weight"])));
        }
        Ok(self.is_mark(0, &[')', ']']).then_some(read))
    }

    /// A weight stated after the unit: "1 cup (240 g)", "2 cans (15 oz each)",
    /// "1 can 15 oz".
    pub(super) fn stated_beside(&mut self, read: &mut ReadAmount<'t>) -> Result<(), QuantityError> {
        let start = self.place();
        let opened = self.is_mark(0, &['(', '[']);
        self.skip(usize::from(opened));
        if (opened || read.container.is_some() && read.beside.is_none())
            && let Some(stated) = self.measured(opened)?
        {
            self.skip(usize::from(opened));
            let typed = self.read_since(start);
            return read.state(stated).ok_or_else(|| too_fine(typed));
        }
        self.back_to(start);
        Ok(())
    }
}

impl ReadAmount<'_> {
    /// Takes over the weight that is stated beside this amount, or the volume
    /// that a container holds: for each container, and for pieces and measures
    /// the whole. A volume beside pieces is kept beside.
    pub(crate) fn state(&mut self, stated: ReadAmount<'_>) -> Option<()> {
        let counts = matches!(self.quantity.unit, Unit::Count(_));
        let contains = counts && self.container.is_some();
        let takes = match stated.quantity.unit {
            Unit::Mass(_) => !matches!(self.quantity.unit, Unit::Mass(_)),
            Unit::Volume(_) => contains,
            Unit::Count(_) => false,
        };
        let whole = if stated.each || contains {
            stated.quantity.each_of(&self.quantity)?
        } else {
            stated.quantity
        };
        if !takes {
            self.beside = Some(whole);
            return Some(());
        }
        self.beside = Some(std::mem::replace(&mut self.quantity, whole));
        self.approximate |= stated.approximate;
        Some(())
    }
}

/// "1-15 oz can" is one can of 15 oz, not a can of one to fifteen: no
/// container's contents range that widely.
pub(super) fn containers_of_size(range: &Quantity, unit: &ReadUnit) -> Option<Quantity> {
    const WIDEST_RANGE: Amount = Amount::whole(5);
    let is_size = unit.container.is_some() && !matches!(unit.unit, Unit::Count(_));
    let is_wide = range.high.over(range.low)? >= WIDEST_RANGE;
    let whole = range.low.times(range.high)?;
    (is_size && is_wide).then(|| Quantity::exactly(whole, Unit::pieces()))
}
