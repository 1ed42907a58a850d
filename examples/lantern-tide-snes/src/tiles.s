; LANTERN TIDE for the SNES: the tiles.
;
; A background tile of 4 colours has two bytes a row: the low bits of its eight
; pixels, then the high bits. A tile of 16 colours goes on with the same again
; for the bits 2 and 3. The macros do that, so a tile can be drawn here as it
; looks: . is see-through, 1 2 3 are the colours.

.p816
.export tiles_bg, tiles_bg_bytes, tiles_sprites, tiles_sprites_bytes

.linecont +

.macro plane_row row, bit
        .local bits
        bits .set 0
        .repeat 8, i
            bits .set bits << 1
            .if .strat(row, i) <> '.'
                bits .set bits | (((.strat(row, i) - '0') >> bit) & 1)
            .endif
        .endrepeat
        .byte bits
.endmacro

.macro pixel_row row
        plane_row row, 0
        plane_row row, 1
.endmacro

.macro tile row0, row1, row2, row3, row4, row5, row6, row7
        pixel_row row0
        pixel_row row1
        pixel_row row2
        pixel_row row3
        pixel_row row4
        pixel_row row5
        pixel_row row6
        pixel_row row7
.endmacro

.macro no_tiles count
        .res count * 16, $00
.endmacro

; Of the sixteen colours the lantern needs four: bits 2 and 3 are 0.
.macro tile_16 row0, row1, row2, row3, row4, row5, row6, row7
        tile row0, row1, row2, row3, row4, row5, row6, row7
        .res 16, $00
.endmacro

.macro no_tiles_16 count
        .res count * 32, $00
.endmacro

.segment "RODATA"

tiles_bg:

        no_tiles 1      ; $00: the empty sky

        ; wave crest ($01)
        tile "........", \
             "..11....", \
             ".1221..1", \
             "12222112", \
             "22222222", \
             "22222222", \
             "22222222", \
             "22222222"

        ; water ($02)
        tile "22222222", \
             "22222222", \
             "22222222", \
             "22222222", \
             "22222222", \
             "22222222", \
             "22222222", \
             "22222222"

        no_tiles 29     ; $03-$1F

        ; Letters stand at their ASCII codes. Only those the game prints are
        ; drawn; the others are blank until somebody needs them.

        no_tiles 16     ; $20-$2F

        ; 0 ($30)
        tile "..1111..", \
             ".11...1.", \
             ".11..11.", \
             ".11.1.1.", \
             ".111..1.", \
             ".11...1.", \
             "..1111..", \
             "........"

        no_tiles 1      ; $31

        ; 2 ($32)
        tile "..1111..", \
             ".11...1.", \
             "......1.", \
             "....11..", \
             "..11....", \
             ".11.....", \
             ".111111.", \
             "........"

        no_tiles 3      ; $33-$35

        ; 6 ($36)
        tile "..1111..", \
             ".11.....", \
             ".11.....", \
             ".11111..", \
             ".11...1.", \
             ".11...1.", \
             "..1111..", \
             "........"

        no_tiles 10     ; $37-$40

        ; A ($41)
        tile "..1111..", \
             ".11...1.", \
             ".11...1.", \
             ".111111.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             "........"

        no_tiles 2      ; $42-$43

        ; D ($44)
        tile ".11111..", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11111..", \
             "........"

        ; E ($45)
        tile ".111111.", \
             ".11.....", \
             ".11.....", \
             ".11111..", \
             ".11.....", \
             ".11.....", \
             ".111111.", \
             "........"

        ; F ($46)
        tile ".111111.", \
             ".11.....", \
             ".11.....", \
             ".11111..", \
             ".11.....", \
             ".11.....", \
             ".11.....", \
             "........"

        no_tiles 2      ; $47-$48

        ; I ($49)
        tile "..1111..", \
             "...11...", \
             "...11...", \
             "...11...", \
             "...11...", \
             "...11...", \
             "..1111..", \
             "........"

        no_tiles 1      ; $4A

        ; K ($4B)
        tile ".11...1.", \
             ".11..1..", \
             ".11.1...", \
             ".111....", \
             ".11.1...", \
             ".11..1..", \
             ".11...1.", \
             "........"

        ; L ($4C)
        tile ".11.....", \
             ".11.....", \
             ".11.....", \
             ".11.....", \
             ".11.....", \
             ".11.....", \
             ".111111.", \
             "........"

        ; M ($4D)
        tile ".11...1.", \
             ".111.11.", \
             ".11.1.1.", \
             ".11.1.1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             "........"

        ; N ($4E)
        tile ".11...1.", \
             ".111..1.", \
             ".11.1.1.", \
             ".11.1.1.", \
             ".11..11.", \
             ".11...1.", \
             ".11...1.", \
             "........"

        ; O ($4F)
        tile "..1111..", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             "..1111..", \
             "........"

        ; P ($50)
        tile ".11111..", \
             ".11...1.", \
             ".11...1.", \
             ".11111..", \
             ".11.....", \
             ".11.....", \
             ".11.....", \
             "........"

        ; Q ($51)
        tile "..1111..", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11.1.1.", \
             ".11..1..", \
             "..111.1.", \
             "........"

        ; R ($52)
        tile ".11111..", \
             ".11...1.", \
             ".11...1.", \
             ".11111..", \
             ".11.1...", \
             ".11..1..", \
             ".11...1.", \
             "........"

        ; S ($53)
        tile "..11111.", \
             ".11.....", \
             ".11.....", \
             "..1111..", \
             ".....11.", \
             ".....11.", \
             ".11111..", \
             "........"

        ; T ($54)
        tile ".111111.", \
             "...11...", \
             "...11...", \
             "...11...", \
             "...11...", \
             "...11...", \
             "...11...", \
             "........"

        ; U ($55)
        tile ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             "..1111..", \
             "........"

        no_tiles 1      ; $56

        ; W ($57)
        tile ".11...1.", \
             ".11...1.", \
             ".11...1.", \
             ".11.1.1.", \
             ".11.1.1.", \
             ".111.11.", \
             ".11...1.", \
             "........"

        no_tiles 3      ; $58-$5A


tiles_bg_bytes = * - tiles_bg

; Sprite tiles lie in rows of sixteen. A 16 x 16 sprite takes two neighbours and
; the two below them, so the lantern's lower half starts with tile 16.
tiles_sprites:

        ; top left ($00)
        tile_16 ".......1", \
                "......1.", \
                "......1.", \
                ".....111", \
                "....1111", \
                "...12222", \
                "...12223", \
                "...12233"

        ; top right ($01)
        tile_16 "1.......", \
                ".1......", \
                ".1......", \
                "111.....", \
                "1111....", \
                "22221...", \
                "32221...", \
                "33221..."

        no_tiles_16 14  ; $02-$0F

        ; bottom left ($10)
        tile_16 "...12233", \
                "...12233", \
                "...12223", \
                "...12222", \
                "....1111", \
                "...11111", \
                ".....111", \
                "........"

        ; bottom right ($11)
        tile_16 "33221...", \
                "33221...", \
                "32221...", \
                "22221...", \
                "1111....", \
                "11111...", \
                "111.....", \
                "........"

tiles_sprites_bytes = * - tiles_sprites
