# Credits that an office states for a line.

stated-for-other = stated for another amount: “{ $line }”
stated-still-holds = It still holds
