"""A design on the desk is found again as it was left, and never written over what someone else wrote."""

from __future__ import annotations

import os
import time
from pathlib import Path

import pytest

from quarterturn.studio.acts import RefusedError
from quarterturn.studio.acts.putting import Put
from quarterturn.studio.desk import Desk, state_folder
from quarterturn.studio.papers import Paper
from quarterturn.studio.refusals import NotHereError, OutsideError, Refusal, StaleError, TakenError
from tests.studio.drafts import TEXT, file_of, open_desk, titled


def wait_until(paper: Paper, revision: int) -> None:
    """Wait until the watcher has brought a design to a revision."""
    end = time.monotonic() + 10
    while paper.now.revision < revision and time.monotonic() < end:
        time.sleep(0.02)
    assert paper.now.revision == revision


def retitled(title: str) -> str:
    return TEXT.replace('title = "Rounds"', f'title = "{title}"')


def test_an_act_changes_the_text_and_not_the_file(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        result = paper.act(0, titled("Moons"))
        assert (result.revision, result.changed, result.act) == (1, True, "put")
        assert paper.now.text == retitled("Moons")
        assert (paper.now.is_saved, paper.title) == (False, "Moons")
    assert file.read_text(encoding="utf-8") == TEXT


def test_an_act_that_changes_nothing_is_no_step(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        assert not paper.act(0, titled("Rounds")).changed
        assert (paper.now.revision, paper.now.done) == (0, None)
        assert not paper.undo(0).changed
        assert not paper.redo(0).changed


def test_an_act_upon_an_older_revision_is_refused(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        paper.act(0, titled("Moons"))
        for ask in (paper.undo, paper.redo):
            for revision in (0, 2):
                with pytest.raises(StaleError) as refused:
                    ask(revision)
                assert refused.value.revision == 1
        with pytest.raises(StaleError):
            paper.act(0, titled("Suns"))
        assert paper.title == "Moons"


def test_a_refused_act_leaves_no_trace(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        with pytest.raises(RefusedError):
            paper.act(0, Put(at="units", value="cubit"))
        with pytest.raises(RefusedError):
            paper.act(0, titled("\ud800"))
        assert (paper.now.revision, paper.now.text) == (0, TEXT)


def test_undo_and_redo_reach_over_a_restart(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        for revision in range(30):
            paper.act(revision, titled(f"Moon {revision}"))
        paper.undo(30)
        identity = paper.id
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        assert (paper.id, paper.now.revision, paper.title) == (identity, 31, "Moon 28")
        paper.redo(31)
        assert paper.title == "Moon 29"
        for revision in range(32, 62):
            paper.undo(revision)
        assert (paper.now.text, paper.now.is_saved, paper.now.done) == (TEXT, True, None)


def test_a_design_without_a_file_is_found_by_its_id(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        paper.act(0, titled("Moons"))
        identity = paper.id
    with open_desk(tmp_path) as desk:
        [entry] = desk.entries()
        assert (entry.id, entry.path) == (identity, None)
        assert desk.paper(identity).title == "Moons"


def test_a_design_to_which_nothing_was_done_leaves_no_journal(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        desk.begin(TEXT)
    assert list((tmp_path / "journals").iterdir()) == []


def test_saving_writes_the_text_with_its_comments(tmp_path: Path) -> None:
    file = file_of(tmp_path, f"# mine\r\n{TEXT}")
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        paper.act(0, titled("Moons"))
        assert paper.save().is_saved
        assert file.read_bytes() == f"# mine\r\n{retitled('Moons')}".encode()
        paper.undo(1)
        assert not paper.now.is_saved


def test_saving_elsewhere_makes_that_its_file_and_takes_nothing_away(tmp_path: Path) -> None:
    file, other = file_of(tmp_path), tmp_path.resolve() / "other.toml"
    other.write_text("precious", encoding="utf-8")
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        paper.act(0, titled("Moons"))
        with pytest.raises(TakenError):
            paper.save(other)
        assert other.read_text(encoding="utf-8") == "precious"
        assert paper.save(other, replace=True).path == other
        assert other.read_text(encoding="utf-8") == retitled("Moons")
        identity = paper.id
    assert file.read_text(encoding="utf-8") == TEXT
    with open_desk(tmp_path / "state") as desk:
        assert desk.open(other).id == identity
        assert desk.open(file).id != identity


def test_no_two_open_designs_share_a_file(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        desk.open(file)
        other = desk.begin(TEXT)
        with pytest.raises(Refusal, match="Another open design"):
            desk.save(other, file, replace=True)
        assert other.now.path is None


def test_a_design_without_a_file_asks_where(tmp_path: Path) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        with pytest.raises(Refusal, match="no file yet"):
            paper.save()
        with pytest.raises(Refusal, match="There is no folder"):
            paper.save(tmp_path / "absent" / "\0x.toml" if os.name == "nt" else Path("/proc/none/x.toml"))


def test_a_file_is_opened_once_however_often_it_is_asked_for(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        assert desk.open(file) is desk.open(file)


def test_a_copy_is_a_design_of_its_own(tmp_path: Path) -> None:
    file, copy = file_of(tmp_path), tmp_path.resolve() / "copy.toml"
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        paper.act(0, titled("Moons"))
        other = desk.duplicate(paper, copy)
        other.act(0, titled("Suns"))
        assert (paper.title, other.title) == ("Moons", "Suns")
        with pytest.raises(TakenError):
            desk.duplicate(paper, copy)


def test_what_someone_else_wrote_is_taken_in_and_can_be_undone(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        file.write_text(retitled("Theirs"), encoding="utf-8")
        wait_until(paper, 1)
        assert (paper.title, paper.now.is_saved, paper.now.done) == ("Theirs", True, "outside")
        paper.undo(1)
        assert (paper.now.text, paper.now.is_saved) == (TEXT, False)


@pytest.mark.parametrize("keep_ours", [True, False])
def test_of_two_texts_both_are_kept_until_one_goes_on(tmp_path: Path, *, keep_ours: bool) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        paper.act(0, titled("Ours"))
        file.write_text(retitled("Theirs"), encoding="utf-8")
        with pytest.raises(OutsideError):
            paper.save()
        assert file.read_text(encoding="utf-8") == retitled("Theirs")
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        assert (paper.title, paper.now.is_outside) == ("Ours", True)
        result = paper.keep(1, ours=keep_ours)
        titles = [paper.title]
        paper.undo(result.revision)
        titles.append(paper.title)
        paper.redo(result.revision + 1)
        assert titles == (["Ours", "Theirs"] if keep_ours else ["Theirs", "Ours"])
        assert paper.now.is_saved is not keep_ours
        paper.save()
        assert paper.stages.at(file.read_text(encoding="utf-8")).design.title == titles[0]


def test_bytes_that_are_no_text_are_not_written_over_unasked(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        file.write_bytes(b"\xff\xfe")
        with pytest.raises(OutsideError):
            paper.save()
        assert (file.read_bytes(), paper.now.text) == (b"\xff\xfe", TEXT)


def test_a_file_that_was_changed_between_two_runs_is_noticed(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        desk.open(file)
    file.write_text(retitled("Theirs"), encoding="utf-8")
    with open_desk(tmp_path / "state") as desk:
        assert desk.open(file).title == "Theirs"


def test_a_file_that_has_gone_is_written_again(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        paper = desk.open(file)
        file.unlink()
        paper.look()
        paper.save()
        assert file.read_text(encoding="utf-8") == TEXT


def test_a_second_studio_has_a_journal_of_its_own_and_says_so(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as first, open_desk(tmp_path / "state") as second:
        one, other = first.open(file), second.open(file)
        assert (one.news.is_elsewhere, other.news.is_elsewhere) == (False, True)
        assert one.id != other.id
        with pytest.raises(Refusal, match="another studio"):
            second.paper(one.id)
        one.act(0, titled("Moons"))
        one.save()
        wait_until(other, 1)
        assert other.title == "Moons"


def test_a_journal_that_cannot_be_read_is_put_aside(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with open_desk(tmp_path / "state") as desk:
        journal = tmp_path / "state" / "journals" / f"{desk.open(file).id}.journal"
    journal.write_bytes(journal.read_bytes().replace(b'"text":', b'"txet":'))
    with open_desk(tmp_path / "state") as desk:
        assert desk.open(file).now.text == TEXT


@pytest.mark.parametrize(
    "identity", ["", "0" * 16, "../../etc/passwd", "0" * 15 + "/", "0" * 16 + "\n", "A" * 16]
)
def test_no_id_leads_out_of_the_folder_of_journals(tmp_path: Path, identity: str) -> None:
    with open_desk(tmp_path) as desk, pytest.raises(NotHereError):
        desk.paper(identity)


def test_a_disk_that_is_full_changes_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from quarterturn.studio.journal import Journal

    def full(*_: object) -> None:
        raise OSError(28, os.strerror(28))

    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        monkeypatch.setattr(Journal, "write", full)
        with pytest.raises(Refusal, match="no space"):
            paper.act(0, titled("Moons"))
        assert (paper.now.text, paper.now.revision) == (TEXT, 0)


def test_only_the_owner_may_look_into_the_state_folder(tmp_path: Path) -> None:
    Desk(tmp_path / "state").stop()
    assert (tmp_path / "state").stat().st_mode & 0o777 == 0o700


def test_the_state_folder_is_where_the_standard_says(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_STATE_HOME", "/var/states")
    assert state_folder() == Path("/var/states/quarterturn")
    monkeypatch.setenv("XDG_STATE_HOME", "relative")
    monkeypatch.setenv("HOME", "/home/ada")
    assert state_folder() == Path("/home/ada/.local/state/quarterturn")
