; LANTERN TIDE for the SNES: everything drawn once, while the picture is off.
; A is 8 bits wide, X and Y are 16 bits wide.

.p816
.include "hardware.inc"
.include "screen.inc"

.import tiles_bg, tiles_bg_bytes, tiles_sprites, tiles_sprites_bytes
.export clear_picture_memory, load_palettes, load_tiles, draw_sea, draw_texts

TILE_WAVE   = $01
TILE_WATER  = $02
SEA_ROW     = 22
LAST_ROW    = 31            ; of the map; the picture ends with row 27

.segment "ZEROPAGE"

attributes:     .res 1      ; high byte of the map words of the text in hand

.segment "CODE"
.a8
.i16

; All 64 KiB of picture memory and the 256 colours.
clear_picture_memory:
        ldx #$0000
        stx VMADDL
        transfer DMA_TWO | DMA_FIXED, zero, BYTES_65536, VMDATAL
        stz CGADD
        transfer DMA_FIXED, zero, 512, CGDATA
        rts

load_palettes:
        ldx #$0000
@next:
        lda colours,x           ; colour number; 0 ends the list
        beq @done
        sta CGADD
        lda colours+1,x
        sta CGDATA
        lda colours+2,x
        sta CGDATA
        inx
        inx
        inx
        bra @next
@done:
        rts

load_tiles:
        ldx #TILES_BG
        stx VMADDL
        transfer DMA_TWO, tiles_bg, tiles_bg_bytes, VMDATAL
        ldx #TILES_SPRITES
        stx VMADDL
        transfer DMA_TWO, tiles_sprites, tiles_sprites_bytes, VMDATAL
        rts

; A row of wave crests, then water to the end of the map. A map word is the
; tile number with the attributes above it; the sea's are all 0.
draw_sea:
        ldx #MAP_2 + SEA_ROW * 32
        stx VMADDL
        ldx #TILE_WAVE
        ldy #32
@crest:
        stx VMDATAL
        dey
        bne @crest
        ldx #TILE_WATER
        ldy #(LAST_ROW - SEA_ROW) * 32
@water:
        stx VMDATAL
        dey
        bne @water
        rts

; Tile numbers of the letters are their ASCII codes, so a text is its own map.
draw_texts:
        ldx #$0000
@line:
        ldy texts,x             ; place; 0 ends the list
        beq @done
        sty VMADDL
        inx
        inx
        lda texts,x
        sta attributes
        inx
@letter:
        lda texts,x
        inx
        cmp #0                  ; 0 ends the line
        beq @line
        sta VMDATAL
        lda attributes
        sta VMDATAL+1           ; the address steps on with this one
        bra @letter
@done:
        rts

.segment "RODATA"

zero:   .byte 0

.macro text_at column, row, palette, string
        .word MAP_1 + row * 32 + column
        .byte palette << 2
        .byte string, 0
.endmacro

texts:
        text_at 10,  6, 0, "LANTERN TIDE"
        text_at  4,  9, 1, "QUILLMOOR SOFTWORKS 2026"
        text_at 10, 13, 2, "PRESS START"
        .word 0

; In mode 0 each background has 32 colours of its own, 4 a palette.
.macro colour number, red, green, blue
        .byte number
        rgb red, green, blue
.endmacro

BG_2    = 32
SPRITE  = 128

colours:
        colour 0 * 4 + 1,    31, 27, 14     ; title: pale gold
        colour 1 * 4 + 1,    22, 24, 26     ; studio: silver
        colour 2 * 4 + 1,    31, 31, 31     ; press start: white
        colour BG_2 + 1,     20, 27, 30     ; foam
        colour BG_2 + 2,      2,  9, 17     ; water
        colour SPRITE + 1,   18, 17, 16     ; iron
        .byte 0
