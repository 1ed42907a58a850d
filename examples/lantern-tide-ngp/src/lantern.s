# Lantern Tide for the Neo Geo Pocket Color: the smallest program that shows
# something. The screen is dark; while A is held it is light.
#
# Register numbers are from memory.

        .include "tlcs900.inc"

        .equ    WATCHDOG,   0x6F
        .equ    ALIVE,      0x4E        # written to WATCHDOG, in time
        .equ    PAD,        0xB0
        .equ    PAD_SEEN,   0x6F82      # what the boot ROM last saw of it
        .equ    BUTTON_A,   4           # number of its bit
        .equ    BACKDROP,   0x8118
        .equ    BACKDROP_ON, 0x80
        .equ    COLOR,      0x83E0      # of the backdrop: blue, green, red, four bits each

        .equ    DARK,       0x300
        .equ    LIGHT,      0x2BF

        .text
start:
        ldb_short WATCHDOG, ALIVE
        ldb     BACKDROP, BACKDROP_ON

frame:  ldb_short WATCHDOG, ALIVE
        bit_short BUTTON_A, PAD
        jr      NOT_ZERO, light
        bit     BUTTON_A, PAD_SEEN
        jr      NOT_ZERO, light
        ldw     COLOR, DARK
        jr      ALWAYS, frame

light:  ldw     COLOR, LIGHT
        jr      ALWAYS, frame
