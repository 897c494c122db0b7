"""What a little more of one element does to matrix and carbide: its direction.

`table.json` says what practice or published work expects, `changes` computes.
"""
