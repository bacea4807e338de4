"""The rules: one file each, and this list is their table of contents."""

from enclosure_app.rules import (
    edge_cover_short,
    gap,
    lap_cycle,
    level_lap,
    no_drip,
    open_penetration,
    ponding,
    reverse_lap,
    short_lap,
    stops_short,
    unsealed_joint,
    upturn_short,
    wet_route,
)
from enclosure_app.rules.rule import Rule

RULES: tuple[Rule, ...] = (
    gap.RULE,
    stops_short.RULE,
    unsealed_joint.RULE,
    open_penetration.RULE,
    reverse_lap.RULE,
    short_lap.RULE,
    level_lap.RULE,
    wet_route.RULE,
    ponding.RULE,
    no_drip.RULE,
    upturn_short.RULE,
    edge_cover_short.RULE,
    lap_cycle.RULE,
)
