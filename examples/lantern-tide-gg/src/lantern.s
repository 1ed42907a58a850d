; LANTERN TIDE for the Game Gear, by Quillmoor Softworks, 2026.
;
; The title over a night sea, and a lantern at the water's edge. Left and
; right carry the lantern; holding button 1 lights it.
;
; 32 KiB, Sega mapper. 0x7FE0-0x7FFF is left out: tag and header go there when
; the cart is built. Of the picture columns 48-207 and lines 24-167 are seen.

	.module lantern

VDP_DATA     = 0xBE
VDP_CONTROL  = 0xBF
PADS         = 0xDC     ; a button that is held reads as 0
MAPPER       = 0xFFFC   ; control, then the banks of slots 0, 1 and 2

STACK_TOP    = 0xDFF0
lantern_x    = 0xC000

TILES        = 0x0000   ; in video RAM
NAMES        = 0x3800   ; two bytes a tile, 32 tiles a row
SPRITE_ROWS  = 0x3F00
SPRITE_PLACES = 0x3F80  ; column and tile of each
WRITE_VRAM   = 0x4000
WRITE_COLORS = 0xC000
ROW_BYTES    = 64

TITLE_AT     = NAMES + 6*ROW_BYTES + 10*2
SEA_AT       = NAMES + 14*ROW_BYTES
SEA_TILES    = 14*32    ; down to the last row of the table
LANTERN_Y    = 14*8 - 16
LANTERN_START = 124
LEFT_EDGE    = 48
RIGHT_EDGE   = 200
LANTERN_TILE = 12       ; even: sprites are two tiles high
WAVE_TILE    = 9

	.area _RESET (ABS)

	.org 0x0000
	di
	im 1
	ld sp, #STACK_TOP
	jp start

	.org 0x0038             ; once a frame
	push af
	in a, (VDP_CONTROL)     ; lets go of the interrupt
	pop af
	ei
	reti

	.org 0x0066
	retn

	.org 0x0080
	.ascii "Quillmoor Softworks"
	.db 0
	.org 0x00A0
	.ascii "Lantern Tide"
	.db 0

	.area _CODE             ; linked at 0x0100

start:
	ld hl, #MAPPER          ; not every console has set the slots
	xor a
	ld (hl), a
	inc hl
	ld (hl), a
	inc hl
	inc a
	ld (hl), a
	inc hl
	inc a
	ld (hl), a

	ld hl, #registers
	ld bc, #(REGISTER_COUNT*256 + 0x80)
set_register:
	ld a, (hl)
	out (VDP_CONTROL), a
	ld a, c
	out (VDP_CONTROL), a
	inc hl
	inc c
	djnz set_register

	ld hl, #(WRITE_VRAM + TILES)
	call seek
	ld bc, #0x4000          ; video RAM holds anything at power-on
clear:
	xor a
	out (VDP_DATA), a
	dec bc
	ld a, b
	or c
	jr nz, clear

	ld hl, #WRITE_COLORS    ; and color memory: border and sprites are black
	call seek
	ld b, #64
	xor a
clear_colors:
	out (VDP_DATA), a
	nop
	djnz clear_colors
	ld hl, #WRITE_COLORS
	call seek
	ld hl, #colors
	ld bc, #(COLOR_BYTES*256 + VDP_DATA)
	otir

	; A tile is a byte for its ground and eight rows. A row becomes four
	; bytes, one a bit of the color: the row itself, the ground, two zeros.
	ld hl, #(WRITE_VRAM + TILES)
	call seek
	ld hl, #tiles
	ld c, #TILE_COUNT
next_tile:
	ld d, (hl)
	inc hl
	ld b, #8
next_row:
	ld a, (hl)
	out (VDP_DATA), a
	inc hl
	ld a, d
	out (VDP_DATA), a
	xor a
	out (VDP_DATA), a
	nop
	out (VDP_DATA), a
	djnz next_row
	dec c
	jr nz, next_tile

	ld hl, #(WRITE_VRAM + TITLE_AT)
	call seek
	ld hl, #title
	ld b, #TITLE_LENGTH
next_letter:
	ld a, (hl)
	call put_tile
	inc hl
	djnz next_letter

	ld hl, #(WRITE_VRAM + SEA_AT)
	call seek
	ld de, #SEA_TILES
	ld b, #32               ; the first row is waves
next_wave:
	ld a, #WAVE_TILE
	call put_tile
	dec de
	djnz next_wave
next_deep:
	ld a, #(WAVE_TILE + 1)
	call put_tile
	dec de
	ld a, d
	or e
	jr nz, next_deep

	ld a, #LANTERN_START
	ld (lantern_x), a
	ld a, #0xE2             ; picture on, frame interrupt, sprites of 8 x 16
	out (VDP_CONTROL), a
	ld a, #0x81
	out (VDP_CONTROL), a

frame:
	ei
	halt
	di
	in a, (PADS)
	ld c, a

	ld hl, #(WRITE_COLORS + LANTERN_COLOR)
	call seek
	ld hl, #dark
	bit 4, c
	jr nz, color_known
	ld hl, #lit
color_known:
	ld a, (hl)
	out (VDP_DATA), a
	inc hl
	ld a, (hl)
	out (VDP_DATA), a

	ld a, (lantern_x)
	bit 2, c
	jr nz, not_left
	cp #LEFT_EDGE
	jr z, not_left
	dec a
not_left:
	bit 3, c
	jr nz, not_right
	cp #RIGHT_EDGE
	jr z, not_right
	inc a
not_right:
	ld (lantern_x), a

	ld hl, #(WRITE_VRAM + SPRITE_ROWS)
	call seek
	ld a, #(LANTERN_Y - 1)  ; sprites show one line lower
	out (VDP_DATA), a
	ld a, #0xD0             ; no more sprites
	out (VDP_DATA), a
	ld hl, #(WRITE_VRAM + SPRITE_PLACES)
	call seek
	ld a, (lantern_x)
	out (VDP_DATA), a
	ld a, #LANTERN_TILE
	out (VDP_DATA), a
	jr frame

; HL: what the video chip is to write to next
seek:
	ld a, l
	out (VDP_CONTROL), a
	ld a, h
	out (VDP_CONTROL), a
	ret

; A: a tile of the first 256
put_tile:
	out (VDP_DATA), a
	xor a
	nop
	out (VDP_DATA), a
	ret

registers:
	.db 0x06, 0x80, 0xFF, 0xFF, 0xFF, 0xFF, 0xFB, 0x00, 0x00, 0x00, 0xFF
REGISTER_COUNT = . - registers

; GGGGRRRR, ----BBBB: the low byte comes first.
LANTERN_COLOR = 17*2
dark:	.dw 0x0555
lit:	.dw 0x06EF
colors:	.dw 0x0100, 0x0BFF, 0x0830, 0x0FB4
COLOR_BYTES = . - colors

title:                          ; tiles in order: blank, L A N T E R I D
	.db 1, 2, 3, 4, 5, 6, 3, 0, 4, 7, 8, 5
TITLE_LENGTH = . - title

tiles:
	.db 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00
	.db 0x00, 0x60, 0x60, 0x60, 0x60, 0x60, 0x60, 0x7E, 0x00   ; L
	.db 0x00, 0x18, 0x3C, 0x66, 0x66, 0x7E, 0x66, 0x66, 0x00   ; A
	.db 0x00, 0x66, 0x76, 0x7E, 0x7E, 0x6E, 0x66, 0x66, 0x00   ; N
	.db 0x00, 0x7E, 0x18, 0x18, 0x18, 0x18, 0x18, 0x18, 0x00   ; T
	.db 0x00, 0x7E, 0x60, 0x60, 0x7C, 0x60, 0x60, 0x7E, 0x00   ; E
	.db 0x00, 0x7C, 0x66, 0x66, 0x7C, 0x78, 0x6C, 0x66, 0x00   ; R
	.db 0x00, 0x3C, 0x18, 0x18, 0x18, 0x18, 0x18, 0x3C, 0x00   ; I
	.db 0x00, 0x7C, 0x66, 0x66, 0x66, 0x66, 0x66, 0x7C, 0x00   ; D
	.db 0xFF, 0x18, 0x3C, 0xE7, 0xC3, 0x00, 0x00, 0x00, 0x00   ; waves
	.db 0xFF, 0x00, 0x00, 0x00, 0x00, 0x00, 0x40, 0xA0, 0x00   ; the deep
	.db 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00
	.db 0x00, 0x18, 0x24, 0x24, 0x18, 0x7E, 0x42, 0x5A, 0x5A   ; lantern
	.db 0x00, 0x7E, 0x7E, 0x5A, 0x5A, 0x42, 0x7E, 0x3C, 0x00
TILE_COUNT = 14
