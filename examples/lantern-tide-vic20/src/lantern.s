; LANTERN TIDE for the VIC-20, by Quillmoor Softworks, 2026.
;
; The title over a night sea, and a lantern at the water's edge. Left and right
; carry it along; holding the button lights it. Up to 8 KiB in block 5.
;
; The file begins with its load address, as VIC-20 files do; the manifest leaves
; it out of the ROM.

; --- routines of the KERNAL that have no entry in its table ---
RAMTAS = $FD8D                  ; clears and measures RAM
RESTOR = $FD52                  ; vectors
IOINIT = $FDF9                  ; interface chips
CINT   = $E518                  ; screen

SCREEN_PAGE    = $0288          ; which page the screen is in depends on RAM
RASTER         = $9004          ; upper eight bits of the line
COLOURS_SCREEN = $900F          ; background, border
JOYSTICK       = $9111          ; bit 4 left, 5 button; what is held reads as 0
JOYSTICK_RIGHT = $9120          ; bit 7
DIRECTION      = $9122          ; of the port of JOYSTICK_RIGHT

COLUMNS   = 22
LAMP_ROW  = 14
SEA_ROW   = 15
ROWS      = 23
SPACE     = $20
WATER     = $A0                 ; a whole cell
LAMP      = $51                 ; a disc
BLACK     = 0
RED       = 2
CYAN      = 3
BLUE      = 6
YELLOW    = 7
WHITE     = 1
RIGHT_END = COLUMNS - 1
STEP      = 4                   ; frames the lantern rests in a cell
LAST_LINE = 125                 ; below the picture

.segment "LOAD"

        .addr $A000

.segment "ZEROPAGE"

cell:    .res 2                 ; screen
colour:  .res 2                 ; the same cell's colour
lamp_x:  .res 1
rest:    .res 1

; Screen codes: A is 1, and digits and space are as in ASCII.
.repeat 26, letter
        .charmap $41 + letter, 1 + letter
.endrepeat

.segment "HEADER"               ; $A000

        .addr start             ; power-on
        .addr start             ; RESTORE key
        .res 5, $FF             ; A0CBM: written when the cart is built

.segment "CODE"

; The KERNAL has done nothing yet but to look for the cartridge.
start:
        sei
        cld
        ldx #$FF
        txs
        jsr RAMTAS
        jsr RESTOR
        jsr IOINIT
        jsr CINT                ; clears the screen, too
        sei                     ; no interrupt is needed from here on
        lda #BLACK * 16 + 8 + BLUE
        sta COLOURS_SCREEN
        jsr draw_sea
        jsr draw_texts
        lda #COLUMNS / 2
        sta lamp_x
        lda #STEP
        sta rest

next_frame:
        lda #LAST_LINE
wait:   cmp RASTER
        bne wait
leave:  cmp RASTER
        beq leave
        jsr move_lamp
        jsr draw_lamp
        jmp next_frame

; Points at the first cell of row X.
at_row:
        lda rows_low,x
        sta cell
        sta colour
        lda rows_high,x
        clc
        adc SCREEN_PAGE
        sta cell + 1
        and #%00000011          ; colours lie in the same place of $9400-$97FF
        ora #$94
        sta colour + 1
        rts

draw_sea:
        ldx #SEA_ROW
@row:   jsr at_row
        ldy #COLUMNS - 1
@cell:  lda #WATER
        sta (cell),y
        lda #BLUE
        sta (colour),y
        dey
        bpl @cell
        inx
        cpx #ROWS
        bne @row
        rts

; Each text: row, column, colour, letters, 0. A row of $FF ends the list.
draw_texts:
        ldx #0
@text:  ldy texts,x
        bmi @done
        inx
        txa
        pha
        tya
        tax
        jsr at_row
        pla
        tax
        ldy texts,x
        inx
        lda texts,x
        sta rest
        inx
@letter:
        lda texts,x
        inx
        cmp #0
        beq @text
        sta (cell),y
        lda rest
        sta (colour),y
        iny
        bne @letter             ; always: a row is short
@done:  rts

move_lamp:
        dec rest
        bne @done
        lda #STEP
        sta rest
        ldx #LAMP_ROW
        jsr at_row
        ldy lamp_x
        lda #SPACE
        sta (cell),y
        lda #%00010000
        bit JOYSTICK
        bne @not_left
        cpy #0
        beq @not_left
        dey
@not_left:
        lda #%01111111
        sta DIRECTION
        bit JOYSTICK_RIGHT      ; bit 7 goes to the N flag
        bmi @not_right
        cpy #RIGHT_END
        beq @not_right
        iny
@not_right:
        lda #%11111111
        sta DIRECTION
        sty lamp_x
@done:  rts

draw_lamp:
        ldx #LAMP_ROW
        jsr at_row
        ldy lamp_x
        lda #LAMP
        sta (cell),y
        ldx #RED
        lda #%00100000
        bit JOYSTICK
        bne @dark
        ldx #YELLOW
@dark:  txa
        sta (colour),y
        rts

texts:
        .byte 4, 5, YELLOW, "LANTERN TIDE", 0
        .byte 7, 1, CYAN, "QUILLMOOR SOFTWORKS", 0
        .byte 8, 9, CYAN, "2026", 0
        .byte 11, 2, WHITE, "BUTTON LIGHTS LAMP", 0
        .byte $FF

rows_low:
        .repeat ROWS, row
        .byte <(row * COLUMNS)
        .endrepeat
rows_high:
        .repeat ROWS, row
        .byte >(row * COLUMNS)
        .endrepeat
