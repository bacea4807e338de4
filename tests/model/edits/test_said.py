"""A section that is renamed keeps all that was said of it; earlier drawings keep their names."""

from collections.abc import Callable
from dataclasses import replace

from enclosure_app.model import edits
from enclosure_app.model.project import Project
from enclosure_app.model.said.carried import Carried, Subject
from enclosure_app.model.said.decision import Decision, State
from enclosure_app.model.said.remark import Remark
from enclosure_app.model.said.site_check import Seen, SiteCheck
from enclosure_app.model.standing.sign_offs import signed
from enclosure_app.model.standing.site_checks import seen_in
from enclosure_app.model.standing.verdicts import history_of, verdicts_in


def test_everything_said_of_a_section_is_said_of_its_new_name(
    house: Callable[..., Project],
) -> None:
    earlier = Decision("gap:old", State.MENDED, "Ida", section="Eave", id="o")
    link = Carried(Subject("", "Eave", "gap:old"), Subject("B", "Eave", "gap:new"), id="l")
    project = replace(house(), decisions=(earlier,), carried=(link,), revision="B")
    project = edits.set_decision(project, Decision("gap:a", State.MENDED, "Ida", section="Eave"))
    project = edits.add_remark(project, Remark("gap:a", "Ida", remark="Seen.", section="Eave"))
    project = edits.tick(project, SiteCheck("lap:a", Seen.IN_ORDER, "Ida", section="Eave"))
    project = edits.sign(project, "Eave", "Ida", "")
    project = edits.sign(project, "Ridge", "Ida", "")
    after = edits.rename_section(project, "Eave", "North eave")
    assert {*verdicts_in(after, "North eave")} == {"gap:a", "gap:new"}
    assert {*seen_in(after, "North eave")} == {"lap:a"}
    assert len(history_of(after, "gap:a", "North eave")) == 2
    assert [each.sign_off.who for each in signed(after, after.sections[0])] == ["Ida"]
    assert [each.section for each in after.sign_offs] == ["North eave", "Ridge"]
    assert verdicts_in(after, "Eave") == seen_in(after, "Eave") == {}
    assert after.decisions[0] is earlier
