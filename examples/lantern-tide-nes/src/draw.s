; LANTERN TIDE for the NES: everything drawn once, while the picture is off.

.include "hardware.inc"

.export load_palettes, clear_screens, draw_sea, draw_texts

TILE_WAVE   = $01
TILE_WATER  = $02
SEA_ROW     = 23
ROWS        = 30

.segment "CODE"

load_palettes:
        lda #>PALETTES
        sta PPUADDR
        lda #<PALETTES
        sta PPUADDR
        ldx #0
@next:
        lda palettes,x
        sta PPUDATA
        inx
        cpx #32
        bne @next
        rts

; Both screens, 2 KiB in all. Tile 0 is blank, palette 0 everywhere.
clear_screens:
        lda #>SCREEN_0
        sta PPUADDR
        lda #<SCREEN_0
        sta PPUADDR
        lda #0
        tax
        ldy #8                  ; 8 pages of 256
@next:
        sta PPUDATA
        inx
        bne @next
        dey
        bne @next
        rts

; A row of wave crests, then water down to the last row of the screen, and the
; attribute table, which follows the last row directly.
draw_sea:
        lda #>(SCREEN_0 + SEA_ROW * 32)
        sta PPUADDR
        lda #<(SCREEN_0 + SEA_ROW * 32)
        sta PPUADDR
        lda #TILE_WAVE
        ldx #32
@crest:
        sta PPUDATA
        dex
        bne @crest
        lda #TILE_WATER
        ldx #(ROWS - SEA_ROW - 1) * 32
@water:
        sta PPUDATA
        dex
        bne @water
        ; One attribute byte colours 4 x 4 tiles; a row of 8 spans the screen.
@attributes:
        lda attribute_rows,x
        ldy #8
@same:
        sta PPUDATA
        dey
        bne @same
        inx
        cpx #8
        bne @attributes
        rts

; Tile numbers of the letters are their ASCII codes, so a text is its own map.
draw_texts:
        ldx #0
@line:
        lda texts,x             ; high byte of the place; 0 ends the list
        beq @done
        sta PPUADDR
        inx
        lda texts,x
        sta PPUADDR
        inx
@letter:
        lda texts,x
        inx
        cmp #0                  ; 0 ends the line
        beq @line
        sta PPUDATA
        bne @letter             ; always: A is not 0
@done:
        rts

.segment "RODATA"

.macro text_at column, row, string
        .byte >(SCREEN_0 + row * 32 + column), <(SCREEN_0 + row * 32 + column)
        .byte string, 0
.endmacro

texts:
        text_at 10,  6, "LANTERN TIDE"
        text_at  4,  9, "QUILLMOOR SOFTWORKS 2026"
        text_at 10, 13, "PRESS START"
        .byte 0

; Four rows of tiles share an attribute row; each pair of bits is a palette.
attribute_rows:
        .byte $00, $00          ; title: palette 0
        .byte $AA               ; studio: palette 2
        .byte $FF               ; press start: palette 3
        .byte $00
        .byte $50               ; the sea begins in the lower half: palette 1
        .byte $55, $55          ; sea

palettes:                       ; backdrop, then three colours each
        .byte $0F, $38, $00, $00    ; title: pale gold
        .byte $0F, $31, $11, $00    ; sea: foam, water
        .byte $0F, $10, $00, $00    ; studio: grey
        .byte $0F, $30, $00, $00    ; press start: white
        .byte $0F, $10, $0C, $0C    ; lantern: iron, glass, flame
        .byte $0F, $10, $0C, $0C
        .byte $0F, $10, $0C, $0C
        .byte $0F, $10, $0C, $0C
