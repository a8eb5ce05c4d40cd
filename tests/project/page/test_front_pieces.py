from __future__ import annotations

from stepper.project.page.front_pieces import front_pieces


def test_a_paragraph_of_one_kind_keeps_its_rows() -> None:
    """The comments in the file look like the page."""
    pieces = front_pieces(
        ["Soft, warm and kind to the wool."],
        ["notes of the designer"],
        ["Soft, warm", "and kind to the wool."],
        4,
    )
    assert [(piece.kind, piece.row, piece.text) for piece in pieces] == [
        ("comment", 4, "Soft, warm"),
        ("comment", 5, "and kind to the wool."),
    ]


def test_what_has_no_kind_stands_apart_under_a_mark_with_its_row() -> None:
    """The reason says whether it may be an instruction."""
    sentences = ["It is warm.", "Slip the first st.", "Knit 2 rows.", "It is blue.", "..x.."]
    kinds = ["notes of the designer", "", "", "notes of the designer", ""]
    rows = ["It is warm. Slip the", "first st. Knit 2 rows. It", "is blue. ..x.."]
    pieces = front_pieces(sentences, kinds, rows, 1)
    assert [(piece.kind, piece.row, piece.text) for piece in pieces] == [
        ("comment", 1, "It is warm."),
        ("note", 1, "Slip the first st. Knit 2 rows."),
        ("comment", 2, "It is blue."),
        ("note", 3, "..x.."),
    ]
    assert [piece.why for piece in pieces if piece.kind == "note"] == [
        "this may be an instruction, and stands in front of the pattern.",
        "it is not clear what this is.",
    ]
