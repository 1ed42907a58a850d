; LANTERN TIDE: picture and main loop for the C64 and the C128, whose video chip,
; screen and joystick are the same.

        .export play

; --- where things are ---
SCREEN          = $0400
SPRITE_POINTER  = $07F8
SPRITE_DATA     = $0E00         ; free on both machines
COLOURS         = $D800
SPRITE_X        = $D000
SPRITE_Y        = $D001
SPRITE_X_HIGH   = $D010
CONTROL_1       = $D011
RASTER          = $D012
SPRITE_ON       = $D015
CONTROL_2       = $D016
MEMORY          = $D018
BORDER          = $D020
BACKGROUND      = $D021
SPRITE_COLOUR   = $D027
JOYSTICK        = $DC00         ; port 2; what is held reads as 0
VIDEO_BANK      = $DD00

; --- colours ---
BLACK  = 0
YELLOW = 7
BLUE   = 6
BROWN  = 9
GREY   = 12
LIGHT  = 14

; --- the picture ---
COLUMNS   = 40
CREST_ROW = 17
SEA_ROW   = 18
SEA_SIZE  = 7 * COLUMNS
CREST     = $62                 ; lower half of a cell
WATER     = $A0                 ; a whole cell
LAST_LINE = $FA                 ; below the picture: the frame is shown
SWELL_TOP = 176
LEFT_EDGE = 28
RIGHT_EDGE = 240

.segment "ZEROPAGE"

frame:     .res 1
lantern_x: .res 1

; Screen codes: A is 1, and digits and space are as in ASCII.
.repeat 26, letter
        .charmap $41 + letter, 1 + letter
.endrepeat

.macro put_text row, column, colour, text, length
        .local @next
        ldx #length - 1
@next:  lda text,x
        sta SCREEN + row * COLUMNS + column,x
        lda #colour
        sta COLOURS + row * COLUMNS + column,x
        dex
        bpl @next
.endmacro

.segment "CODE"

; The machine is set up and interrupts are off. Does not return.
play:
        lda VIDEO_BANK
        ora #%00000011          ; the video chip sees $0000-$3FFF
        sta VIDEO_BANK
        lda #$1B
        sta CONTROL_1
        lda #$C8
        sta CONTROL_2
        lda #$15                ; screen at $0400, letters of the character ROM
        sta MEMORY
        lda #BLACK
        sta BORDER
        sta BACKGROUND
        jsr clear_screen
        jsr draw_sea
        put_text 4, 14, YELLOW, title, title_length
        put_text 7, 8, LIGHT, studio, studio_length
        put_text 11, 11, GREY, hint, hint_length
        jsr set_lantern

next_frame:
        lda RASTER
        cmp #LAST_LINE
        bne next_frame
leave_line:
        cmp RASTER
        beq leave_line
        inc frame
        jsr move_lantern
        jsr swell
        jmp next_frame

clear_screen:
        ldx #0
        lda #' '
@next:  sta SCREEN,x
        sta SCREEN + $100,x
        sta SCREEN + $200,x
        sta SCREEN + $2E8,x     ; the last 256 of 1000 cells
        inx
        bne @next
        rts

draw_sea:
        ldx #COLUMNS - 1
@crest: lda #CREST
        sta SCREEN + CREST_ROW * COLUMNS,x
        lda #LIGHT
        sta COLOURS + CREST_ROW * COLUMNS,x
        dex
        bpl @crest
        ldx #SEA_SIZE / 2
@water: lda #WATER
        sta SCREEN + SEA_ROW * COLUMNS - 1,x
        sta SCREEN + SEA_ROW * COLUMNS + SEA_SIZE / 2 - 1,x
        lda #BLUE
        sta COLOURS + SEA_ROW * COLUMNS - 1,x
        sta COLOURS + SEA_ROW * COLUMNS + SEA_SIZE / 2 - 1,x
        dex
        bne @water
        rts

set_lantern:
        ldx #lantern_length - 1
@next:  lda lantern,x
        sta SPRITE_DATA,x
        dex
        bpl @next
        lda #SPRITE_DATA / 64
        sta SPRITE_POINTER
        lda #(LEFT_EDGE + RIGHT_EDGE) / 2
        sta lantern_x
        sta SPRITE_X
        lda #SWELL_TOP
        sta SPRITE_Y
        lda #0
        sta SPRITE_X_HIGH
        sta frame
        lda #BROWN
        sta SPRITE_COLOUR
        lda #%00000001
        sta SPRITE_ON
        rts

; Left and right carry the lantern; the button lights it.
move_lantern:
        lda JOYSTICK
        ldx lantern_x
        lsr                     ; up
        lsr                     ; down
        lsr                     ; left
        bcs @not_left
        cpx #LEFT_EDGE
        beq @not_left
        dex
@not_left:
        lsr                     ; right
        bcs @not_right
        cpx #RIGHT_EDGE
        beq @not_right
        inx
@not_right:
        stx lantern_x
        stx SPRITE_X
        ldx #BROWN
        lsr                     ; button
        bcs @dark
        ldx #YELLOW
@dark:  stx SPRITE_COLOUR
        rts

swell:
        lda frame
        lsr
        lsr
        and #%00001111
        tax
        lda heights,x
        sta SPRITE_Y
        rts

.segment "PICTURE"

title:  .byte "LANTERN TIDE"
title_length = * - title
studio: .byte "QUILLMOOR SOFTWORKS 2026"
studio_length = * - studio
hint:   .byte "BUTTON LIGHTS LAMP"
hint_length = * - hint

heights:
        .byte SWELL_TOP, SWELL_TOP, SWELL_TOP + 1, SWELL_TOP + 2
        .byte SWELL_TOP + 3, SWELL_TOP + 4, SWELL_TOP + 5, SWELL_TOP + 5
        .byte SWELL_TOP + 5, SWELL_TOP + 5, SWELL_TOP + 4, SWELL_TOP + 3
        .byte SWELL_TOP + 2, SWELL_TOP + 1, SWELL_TOP, SWELL_TOP

; A sprite is 21 rows of 24 dots; here each is drawn as it looks.
.macro dots row
        .local bits
        .repeat 3, byte
            bits .set 0
            .repeat 8, dot
                bits .set bits << 1
                .if .strat(row, byte * 8 + dot) <> '.'
                    bits .set bits | 1
                .endif
            .endrepeat
            .byte bits
        .endrepeat
.endmacro

lantern:
        dots "...........##..........."
        dots "..........#..#.........."
        dots "..........#..#.........."
        dots ".........######........."
        dots "........########........"
        dots ".......##########......."
        dots "......#..........#......"
        dots "......#....##....#......"
        dots "......#...####...#......"
        dots "......#...####...#......"
        dots "......#..######..#......"
        dots "......#..######..#......"
        dots "......#..######..#......"
        dots "......#...####...#......"
        dots "......#...####...#......"
        dots "......#....##....#......"
        dots "......############......"
        dots ".......##########......."
        dots "......############......"
        dots "......############......"
        dots "........................"
lantern_length = * - lantern
