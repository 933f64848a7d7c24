# Guided use of the example district.

guide-title = New here? Three minutes with the example district
guide-lead = Six short steps lead from a recipe’s text to a week that is ready for review. You can leave at any step and go on later.
guide-begin = Show me
guide-skip = Not now
guide-empty = Start an empty book
guide-emptied = An empty book lies open. Undo brings the example back.
guide-step = Step { $step } of { $steps }:
guide-back = Back
guide-next = Next
guide-leave = Leave, go on later
guide-done = Finish
guide-go-on = Go on with the guided use at step { $step }
guide-again = Guided use of the example

guide-book = The book
guide-book-text = The district Quillhaven is invented. Each row is a recipe with its calories, saturated fat and sodium in one serving; “Still open” counts lines that could not be weighed. Choose Next to open a card.
guide-card = A recipe is text
guide-card-text = Change an amount in the field Ingredients, as on a kitchen card: the reading beside the line moves at once. A line that was read wrongly can be set right with the button beside it.
guide-figures = Each figure can be opened
guide-figures-text = In “One serving” choose the figure of sodium: it shows which line brings how much, the arithmetic, and the source of each value. The small ? beside a figure says what it is and how it is computed.
guide-week = A week against its rules
guide-week-text = The strip on top says what is missed and what is not known. Below, each requirement stands with its figure, its limit, the paragraph, and what carries it. Change the planned servings of a choice, and the verdicts follow.
guide-find = Find anything
guide-find-text = Press Ctrl+K and type some letters: recipes, weeks, foods and views are found in one field. The arrow keys choose, Enter opens.
guide-files = Keep your work
guide-files-text = Everything stays in this browser. Save the book as a file often. When you have seen enough of the example, start an empty book here.
