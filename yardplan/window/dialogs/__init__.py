"""What comes up when asked for: start panel with a new yard, site card, variety card, commands, about.

`StartPanel(open_yard, parent)` lies on the empty canvas. The others are boxes of their own, none of them
needed while drawing: `SiteCard(open_yard, parent)`, `CultivarCard(open_yard, key, parent)`,
`CommandFinder(actions, parent)`, `LocalRules(open_yard, parent)`, `OwnVariety(open_yard, parent)`,
`AboutDialog(parent)`.
"""
