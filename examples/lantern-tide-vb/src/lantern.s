# Lantern Tide for the Virtual Boy: the smallest program that shows something. The
# whole screen glows dimly, and brightly while A is held.
#
# Register numbers are from memory.

        .include "v810.inc"

        .equ    VIDEO,    0x0006                # upper half of $0005F800, rounded up
        .equ    STATE,    0xF820
        .equ    CONTROL,  0xF822
        .equ    BRIGHT_A, 0xF824                # the next two are BRIGHT_B and BRIGHT_C
        .equ    BRIGHT_B, 0xF826
        .equ    BRIGHT_C, 0xF828
        .equ    REST,     0xF82A
        .equ    FRAMES,   0xF82E
        .equ    DRAWING,  0xF842
        .equ    BACKDROP, 0xF870

        .equ    READY,    0x40                  # of STATE: the mirrors swing
        .equ    SHOW,     0x0302                # of CONTROL
        .equ    DRAW,     0x0002                # of DRAWING

        .equ    MEMORY,   0x0004                # upper half of $00038000, rounded up
        .equ    LAST_WORLD, 0xDBE0 - 0x10000    # the first of the picture's layers
        .equ    NO_MORE,  0x0040                # of a layer: there are none
        .equ    COLUMNS,  0xDC00 - 0x10000      # how long each column is lit
        .equ    COLUMN,   0x0054

        .equ    INPUTS,   0x0200                # upper half of $02000000
        .equ    KEYS,     0x10
        .equ    READING,  0x28
        .equ    WAITS,    0x24
        .equ    START,    0x84                  # of READING: read the buttons
        .equ    BUSY,     0x02
        .equ    KEY_A,    0x04

        .equ    DIM,      10
        .equ    BRIGHT,   60

# r10 video registers, r11 their memory, r12 input registers

        .text
start:
        movhi   INPUTS, 0, 12
        movea   1, 0, 6
        sth     6, WAITS, 12                    # one wait state for the ROM
        movhi   VIDEO, 0, 10
        movhi   MEMORY, 0, 11

wait:   ldh     STATE, 10, 6
        andi    READY, 6, 6
        branch  ZERO, wait

        movea   LAST_WORLD, 11, 7
        movea   NO_MORE, 0, 6
        sth     6, 0, 7
        movea   COLUMNS, 11, 7                  # 512 half-words, for both eyes
        movea   512, 0, 8
        movea   COLUMN, 0, 6
column: sth     6, 0, 7
        add     2, 7
        add     -1, 8
        branch  NOT_ZERO, column

        sth     0, REST, 10
        sth     0, FRAMES, 10
        movea   3, 0, 6                         # the backdrop in the brightest of four colours
        sth     6, BACKDROP, 10
        movea   DRAW, 0, 6
        sth     6, DRAWING, 10
        movea   SHOW, 0, 6
        sth     6, CONTROL, 10

frame:  movea   START, 0, 6
        sth     6, READING, 12
busy:   ldh     READING, 12, 6
        andi    BUSY, 6, 6
        branch  NOT_ZERO, busy
        movea   DIM, 0, 7
        ldh     KEYS, 12, 6
        andi    KEY_A, 6, 6
        branch  ZERO, set
        movea   BRIGHT, 0, 7
set:    sth     7, BRIGHT_A, 10                 # the colours add up
        sth     7, BRIGHT_B, 10
        sth     7, BRIGHT_C, 10
        branch  ALWAYS, frame
