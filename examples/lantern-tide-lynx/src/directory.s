; The directory: one entry, the program.

        .import __LANTERN_LOAD__, __LANTERN_SIZE__

.segment "DIRECTORY"

        .byte 1                 ; block
        .word 0                 ; offset in it
        .byte $88               ; what newer loaders write here
        .word __LANTERN_LOAD__
        .word __LANTERN_SIZE__
