"""The panels around the sheet. Each is built as `Panel(open_yard, parent=None)` and follows the open yard.

- `findings_list.FindingsList`: counts and cards of what the checks found; `go_to(things, marks)`; `step(±1)`.
- `in_hand.InHandCard`: the plant in hand (or, `about=selected_plant`, the one selected) with the facts that
  decide; `card_wanted(key)`, `partners_wanted(key, id | None)`. It stands in the catalogue and the fields.
- `catalogue_list.CatalogueList`: search, filters, rootstock and form; takes a variety in hand, drags out
  `canvas.plant_drop.PLANT_MIME`; `.in_hand` its card.
- `fields.Fields`: facts of what is selected, or of the yard; `focus_first()`, `site_wanted()`, `.plant_card`.
- `plant_list.PlantList`: everything on the plan, in step with the selection; `edit_wanted()`.
- `partner_list.PartnerList`: varieties that would set fruit on a plant; `show_for(key, id)`.
- `season_strip.SeasonStrip`: the season's bands with day and hour; `day_changed(str)`, `hour_changed(float)`.
- `year_control.YearControl`: the growth year.
"""
