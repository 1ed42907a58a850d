| LANTERN TIDE for the Mega Drive: what is done once, while the picture is off.

	.include "hardware.inc"

	.global	park_z80, silence, set_up_video, load_tiles, draw_sea, draw_texts

TILE_WAVE	= 0x01
TILE_WATER	= 0x02
SEA_ROW		= 21
PLANE_ROWS	= 32

PALETTE_TITLE	= 0 << 13		| a map word: tile number and palette
PALETTE_START	= 1 << 13
PALETTE_SEA	= 2 << 13

	.text

| The Z80 runs whatever its RAM holds, and that is anything. Take its bus, give
| it an endless loop, and start it again from there.
park_z80:
	move.w	#0x0100, Z80_BUS
	move.w	#0x0100, Z80_RESET	| the bus is granted only out of reset
1:
	btst	#0, Z80_BUS		| the upper byte: bit 8 of the word
	bne.s	1b
	lea	z80_loop, a0
	lea	Z80_RAM, a1
	moveq	#z80_loop_end - z80_loop - 1, d0
2:
	move.b	(a0)+, (a1)+		| its memory takes bytes only
	dbra	d0, 2b
	move.w	#0x0000, Z80_RESET	| the music chip is reset with it
	moveq	#31, d0
3:
	dbra	d0, 3b			| and needs some 200 cycles for that
	move.w	#0x0000, Z80_BUS	| give the bus back
	move.w	#0x0100, Z80_RESET
	rts

| The tone chip hums at power-on: all four channels to no volume.
silence:
	move.b	#0x9F, PSG
	move.b	#0xBF, PSG
	move.b	#0xDF, PSG
	move.b	#0xFF, PSG
	rts

| The registers, then nothing but zeros in all three memories.
set_up_video:
	lea	video_registers, a0
	moveq	#(video_registers_end - video_registers) / 2 - 1, d0
1:
	move.w	(a0)+, VDP_CONTROL
	dbra	d0, 1b
	moveq	#0, d1
	vdp_address WRITE_VRAM, 0
	move.w	#0x10000 / 4 - 1, d0
2:
	move.l	d1, VDP_DATA
	dbra	d0, 2b
	vdp_address WRITE_CRAM, 0
	moveq	#64 / 2 - 1, d0
3:
	move.l	d1, VDP_DATA
	dbra	d0, 3b
	vdp_address WRITE_VSRAM, 0
	moveq	#40 / 2 - 1, d0
4:
	move.l	d1, VDP_DATA
	dbra	d0, 4b
	rts

load_tiles:
	vdp_address WRITE_VRAM, 0
	lea	tiles, a0
	move.w	#tiles_longs - 1, d0
1:
	move.l	(a0)+, VDP_DATA
	dbra	d0, 1b
	rts

| A row of wave crests, then water to the end of the plane. Two map words fit
| into a long word.
draw_sea:
	vdp_address WRITE_VRAM, PLANE_B + SEA_ROW * ROW_BYTES
	move.l	#(PALETTE_SEA + TILE_WAVE) * 0x00010001, d1
	moveq	#ROW_BYTES / 4 - 1, d0
1:
	move.l	d1, VDP_DATA
	dbra	d0, 1b
	move.l	#(PALETTE_SEA + TILE_WATER) * 0x00010001, d1
	move.w	#(PLANE_ROWS - SEA_ROW - 1) * ROW_BYTES / 4 - 1, d0
2:
	move.l	d1, VDP_DATA
	dbra	d0, 2b
	rts

| Tile numbers of the letters are their ASCII codes, so a text is its own map
| but for the palette.
draw_texts:
	lea	texts, a0
1:
	move.l	(a0)+, d0		| place, as a command; 0 ends the list
	beq.s	3f
	move.l	d0, VDP_CONTROL
	move.w	(a0)+, d1		| palette
	movea.l	(a0)+, a1
2:
	moveq	#0, d0
	move.b	(a1)+, d0		| 0 ends the line
	beq.s	1b
	add.w	d1, d0
	move.w	d0, VDP_DATA
	bra.s	2b
3:
	rts

	.section .rodata, "a"

| Upper byte: 0x80 + register number. Lower byte: its value.
video_registers:
	.word	0x8004			| 0: no line interrupt
	.word	0x8104			| 1: picture off, no interrupt, Mega Drive mode
	.word	0x8200 + (PLANE_A >> 10)
	.word	0x8300			| 3: the window is not used
	.word	0x8400 + (PLANE_B >> 13)
	.word	0x8500 + (SPRITES >> 9)
	.word	0x8600
	.word	0x8700			| 7: colour 0 of palette 0 behind everything
	.word	0x8800
	.word	0x8900
	.word	0x8AFF			| 10: line interrupt as late as possible
	.word	0x8B00			| 11: planes scroll as a whole
	.word	0x8C81			| 12: 320 pixels wide, no interlace
	.word	0x8D00 + (SCROLL >> 10)
	.word	0x8E00
	.word	0x8F02			| 15: the address steps on by a word
	.word	0x9001			| 16: planes of 64 x 32 tiles
	.word	0x9100			| 17, 18: the window covers nothing
	.word	0x9200
video_registers_end:

	.macro text_at column, row, palette, string
	vdp_command WRITE_VRAM, PLANE_A + (\row) * ROW_BYTES + (\column) * 2
	.word	\palette
	.long	\string
	.endm

texts:
	text_at	14,  6, PALETTE_TITLE, title
	text_at	 8,  9, PALETTE_SEA, studio
	text_at	14, 13, PALETTE_START, press_start
	.long	0

title:		.asciz	"LANTERN TIDE"
studio:		.asciz	"QUILLMOOR SOFTWORKS 2026"
press_start:	.asciz	"PRESS START"

z80_loop:
	.byte	0xF3			| DI: no interrupts
	.byte	0x18, 0xFE		| JR to itself
z80_loop_end:
	.balign	2
