"""What comes up when asked for: start panel, new yard, site card, variety card, commands, about.

`StartPanel(open_yard, parent)` lies on the empty canvas. The others are boxes of their own, none of them
needed while drawing: `NewYardDialog(units, parent)` (`.yard()` after it was accepted),
`SiteCard(open_yard, parent)`, `CultivarCard(open_yard, key, parent)`, `CommandFinder(actions, parent)`,
`LocalRules(open_yard, parent)`, `OwnVariety(open_yard, parent)`, `AboutDialog(parent)`.
"""
