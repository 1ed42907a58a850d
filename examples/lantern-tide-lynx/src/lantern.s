; LANTERN TIDE for the Lynx, by Quillmoor Softworks, 2026.
;
; A lantern over the sea at night; while button A is held it burns, and the sky is
; lighter. The loader puts the program at $0200 and jumps to it.

        .setcpu "65C02"
        .include "hardware.inc"

SCREEN      = $4000             ; 102 lines of 80 bytes, two dots to a byte
LINE        = 80
SKY_LINES   = 64
SEA_LINES   = 102 - SKY_LINES
LANTERN     = SCREEN + 46 * LINE + 38
LANTERN_LINES = 18
LANTERN_WIDTH = 4

SKY         = $00               ; two dots of a colour
SEA         = $11
GLASS       = $22

.segment "ZEROPAGE"

place:  .res 2
lines:  .res 1

.segment "LANTERN"

start:
        sei
        cld
        ldx #$FF
        txs
        stz MAP                 ; registers and boot ROM are seen
        stz DISPLAY             ; no picture until it is drawn

        lda #<SCREEN
        sta place
        lda #>SCREEN
        sta place + 1
        lda #SKY_LINES
        ldx #SKY
        jsr draw_lines
        lda #SEA_LINES
        ldx #SEA
        jsr draw_lines
        jsr draw_lantern

        lda #158                ; 60 pictures a second
        sta LINE_TIME
        lda #RUN
        sta LINE_CONTROL
        lda #104
        sta LINES_TIME
        lda #RUN_LINES
        sta LINES_CONTROL
        lda #41
        sta PICTURE_TIME
        lda #<SCREEN
        sta PICTURE
        lda #>SCREEN
        sta PICTURE + 1
        lda #SHOWN
        sta DISPLAY

frame:
        lda LINES_LEFT          ; until the last line
        bne frame
        clc                     ; night
        lda BUTTONS
        and #BUTTON_A
        beq @colors
        sec
@colors:
        ldx #0
        bcc @next
        ldx #dawn - night
@next:
        ldy #0
@color:
        lda night,x
        sta GREEN,y
        lda night + 1,x
        sta BLUE_RED,y
        inx
        inx
        iny
        cpy #3
        bne @color
        bra frame

; A: lines, X: two dots; from place on.
draw_lines:
        sta lines
@line:
        ldy #LINE - 1
        txa
@dots:
        sta (place),y
        dey
        bpl @dots
        jsr next_line
        dec lines
        bne @line
        rts

draw_lantern:
        lda #<LANTERN
        sta place
        lda #>LANTERN
        sta place + 1
        lda #LANTERN_LINES
        sta lines
@line:
        lda #GLASS
        ldy #LANTERN_WIDTH - 1
@dots:
        sta (place),y
        dey
        bpl @dots
        jsr next_line
        dec lines
        bne @line
        rts

next_line:
        clc
        lda place
        adc #LINE
        sta place
        bcc @same_page
        inc place + 1
@same_page:
        rts

; Green, and blue and red, of sky, sea and glass.
night:  .byte $0, $20,  $1, $50,  $2, $13
dawn:   .byte $5, $A6,  $4, $91,  $E, $2F
