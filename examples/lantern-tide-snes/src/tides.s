; LANTERN TIDE for the SNES: the tides, a second program in bank $01.
;
; It holds only tables. Standing apart from the main program, they can be
; changed, or replaced on the cartridge, without assembling that again.

.p816
.include "hardware.inc"
.include "tides.inc"

.segment "TIDES"

; One swell of the tide: 4 + 4 sin(i * 360 / 64 degrees), rounded.
swell:
        .byte 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 7, 8, 8, 8, 8, 8
        .byte 8, 8, 8, 8, 8, 8, 7, 7, 7, 7, 6, 6, 6, 5, 5, 4
        .byte 4, 4, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0
        .byte 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 3, 3, 4

sky_colours:
        rgb  0,  0,  3
        rgb  0,  0,  4
        rgb  1,  0,  5
        rgb  1,  1,  6
        rgb  2,  1,  7
        rgb  3,  2,  8
        rgb  4,  2,  9
        rgb  5,  3,  9
        rgb  6,  3, 10
        rgb  8,  4, 10
        rgb  9,  5, 10
        rgb 11,  5, 10
        rgb 12,  6,  9
        rgb 14,  7,  9
        rgb 16,  8,  8
        rgb 18,  9,  8

.assert sky_colours - swell = SWELL_STEPS, error
.assert * - sky_colours = SKY_STEPS * 2, error
