"""How thermo_data/layers/carbides.json is made: tungsten in M6C and M23C6, Cr with Si.

`data` what is fitted to, `numbers` what may move and what follows, `text` the files.
"""
