; LANTERN TIDE for the Game Boy: everything drawn once, while the picture is off.

	.module draw
	.include "hardware.inc"

	.globl clear, load_tiles, draw_sea, draw_texts
	.globl font, font_end, tiles, tiles_end

TILE_WAVE  = 0x01       ; tile 0 is blank
TILE_WATER = 0x02
TILE_FONT  = 0x20
SEA_ROW    = 13
LAST_ROW   = 17

	.area _CODE

; In: hl = start, bc = length, not 0.
clear:
	xor a
	ld (hl+), a
	dec bc
	ld a, b
	or c
	jr nz, clear
	ret

load_tiles:
	ld hl, #tiles           ; waves, water, lantern: two bytes a row
	ld de, #TILES + TILE_WAVE * TILE_SIZE
	ld bc, #tiles_end
1$:
	ld a, (hl+)
	ld (de), a
	inc de
	call is_end
	jr nz, 1$
	ld hl, #font            ; letters: one byte a row, used for both
	ld de, #TILES + TILE_FONT * TILE_SIZE
	ld bc, #font_end
2$:
	ld a, (hl+)
	ld (de), a              ; low bits of eight pixels
	inc de
	ld (de), a              ; high bits: the same, so colour 3 or 0
	inc de
	call is_end
	jr nz, 2$
	ret

; Out: zero flag set if hl = bc.
is_end:
	ld a, h
	cp b
	ret nz
	ld a, l
	cp c
	ret

; A row of wave crests, then water down to the last row of the picture.
draw_sea:
	ld hl, #MAP + SEA_ROW * 32
	ld a, #TILE_WAVE
	ld b, #32
	call fill
	ld a, #TILE_WATER
	ld b, #(LAST_ROW - SEA_ROW) * 32
fill:
	ld (hl+), a
	dec b
	jr nz, fill
	ret

; Tile numbers of the letters are their ASCII codes, so a text is its own map.
draw_texts:
	ld hl, #texts
1$:
	ld a, (hl+)             ; place, low byte first; 0 ends the list
	ld e, a
	ld a, (hl+)
	ld d, a
	or e
	ret z
2$:
	ld a, (hl+)
	or a                    ; 0 ends the line
	jr z, 1$
	ld (de), a
	inc de
	jr 2$

texts:
	.dw MAP + 2 * 32 + 4
	.asciz "LANTERN TIDE"
	.dw MAP + 4 * 32 + 0
	.asciz "QUILLMOOR SOFTWORKS"
	.dw MAP + 6 * 32 + 8
	.asciz "2026"
	.dw MAP + 9 * 32 + 4
	.asciz "PRESS START"
	.dw 0
