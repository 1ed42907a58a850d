| LANTERN TIDE for the Mega Drive, by Quillmoor Softworks, 2026.
|
| The title over a night sea that drifts by, and a lantern that bobs on the
| tide. Left and right carry the lantern; holding START or A lights it, and
| while it burns the sky grows slowly brighter.
|
| Vectors at 0, program from 0x200. 0x100-0x1FF is left out: the header goes
| there when the cart is built.

	.include "hardware.inc"

LANTERN_TOP	= 148		| highest point of the swell
LEFT_EDGE	= 8
RIGHT_EDGE	= 296
GLOW_FULL	= 15
SPRITE_ORIGIN	= 128		| a sprite's x and y count from outside the picture

TILE_LANTERN	= 0x5B		| right behind the letters

PALETTE_LANTERN	= 3 << 13
IN_FRONT	= 1 << 15

| -------------------------------------------------------------------- vectors

	.section .vectors, "a"

	.long	stack_top
	.long	start
	.rept	22		| errors of the processor, and numbers in reserve
	.long	fault
	.endr
	.long	ignore		| spurious interrupt
	.rept	5		| levels 1-5; 2 is the pad port, 4 the picture line
	.long	ignore
	.endr
	.long	vblank		| level 6: vertical blank
	.long	ignore		| level 7
	.rept	32		| traps, and numbers in reserve
	.long	fault
	.endr

| ------------------------------------------------------------------- power on

	.text
	.global	start
start:
	move.w	#0x2700, sr		| no interrupts while nothing is set up

	| Later consoles lock the video chip until they are shown this word.
	| First comes the question whether this is one: the register does not
	| exist on the early ones.
	move.b	VERSION, d0
	andi.b	#0x0F, d0
	beq.s	unlocked
	move.l	#0x53454741, TMSS	| "SEGA"
unlocked:
	tst.w	VDP_CONTROL		| drops a half-written address, if any

	| RAM holds anything at power-on. The stack lies in it, so no subroutine
	| before this is done.
	lea	ram_start, a0
	move.w	#0x10000 / 4 - 1, d0
clear_ram:
	clr.l	(a0)+
	dbra	d0, clear_ram

	| Variables with a first value lie in ROM; they are used in RAM.
	lea	data_load, a0
	lea	data_start, a1
copy_data:
	cmpa.l	#data_end, a1
	beq.s	data_copied
	move.w	(a0)+, (a1)+
	bra.s	copy_data
data_copied:

	bsr.w	park_z80
	bsr.w	silence
	bsr.w	set_up_video
	bsr.w	load_tiles
	bsr.w	draw_sea
	bsr.w	draw_texts

	move.b	#PAD_SELECT, PAD_1_CTRL	| the select line is ours to drive
	move.b	#PAD_SELECT, PAD_1

	move.w	#0x8164, VDP_CONTROL	| picture on, vertical blank interrupt on
	move.w	#0x2300, sr		| levels above 3 come through

| ------------------------------------------------------------------ main loop

main:
	bsr.s	read_pad
	bsr.s	move_lantern
	bsr.w	light_lantern
	bsr.w	place_lantern
	bsr.w	drift
	move.b	#1, frame_ready		| all of it is consistent: show it
wait:
	tst.b	frame_ready		| cleared when the picture has it
	bne.s	wait
	bra.s	main

| Six data lines carry eight buttons: the select line chooses which. The pad
| needs a moment to follow it. Pressed reads as 0.
read_pad:
	move.b	#PAD_SELECT, PAD_1
	nop
	nop
	move.b	PAD_1, d0		| - - C B Right Left Down Up
	move.b	#0, PAD_1
	nop
	nop
	move.b	PAD_1, d1		| - - Start A 0 0 Down Up
	move.b	#PAD_SELECT, PAD_1
	andi.b	#0x3F, d0
	lsl.b	#2, d1
	andi.b	#0xC0, d1
	or.b	d1, d0			| Start A C B Right Left Down Up
	not.b	d0
	move.b	d0, pad
	rts

move_lantern:
	move.w	lantern_x, d0
	btst	#PAD_LEFT, pad
	beq.s	not_left
	cmpi.w	#LEFT_EDGE, d0
	beq.s	not_left
	subq.w	#1, d0
not_left:
	btst	#PAD_RIGHT, pad
	beq.s	not_right
	cmpi.w	#RIGHT_EDGE, d0
	beq.s	not_right
	addq.w	#1, d0
not_right:
	move.w	d0, lantern_x
	rts

| The flame follows the button at once, the sky follows over a quarter second.
light_lantern:
	lea	dark_colours, a0
	move.w	glow, d0
	move.b	pad, d1
	andi.b	#PAD_START + PAD_A, d1
	beq.s	darker
	lea	lit_colours, a0
	cmpi.w	#GLOW_FULL, d0
	beq.s	colour
	addq.w	#1, d0
	bra.s	colour
darker:
	tst.w	d0
	beq.s	colour
	subq.w	#1, d0
colour:
	move.w	d0, glow
	move.l	(a0), glass_and_flame
	lsr.w	#1, d0			| 16 steps of glow, 8 sky colours
	add.w	d0, d0			| two bytes each
	lea	sky_colours, a0
	move.w	(a0, d0.w), sky
	rts

place_lantern:
	move.w	frame, d0
	lsr.w	#1, d0			| one step of the swell every second frame
	andi.w	#0x3F, d0
	lea	swell, a0
	moveq	#0, d1
	move.b	(a0, d0.w), d1
	addi.w	#LANTERN_TOP + SPRITE_ORIGIN, d1
	move.w	d1, sprite_y
	move.w	lantern_x, d1
	addi.w	#SPRITE_ORIGIN, d1
	move.w	d1, sprite_x
	rts

| The sea moves one pixel to the left every fourth frame. Its plane joins up
| with itself.
drift:
	addq.w	#1, frame
	move.w	frame, d0
	lsr.w	#2, d0
	neg.w	d0			| positive positions move to the right
	andi.w	#0x03FF, d0
	move.w	d0, sea_scroll
	rts

| ------------------------------------------------------------- vertical blank

| The video chip's memory is changed only while no picture is drawn: it would
| show, and the chip has no time for it then. All this fits into the blank.
vblank:
	movem.l	d0/a0, -(sp)
	tst.b	frame_ready
	beq.s	late			| half a frame is worse than the old one

	vdp_address WRITE_VRAM, SPRITES
	move.l	sprite_y, VDP_DATA	| y, size and link
	move.l	sprite_look, VDP_DATA	| tile and palette, x
	vdp_address WRITE_VRAM, SCROLL + 2
	move.w	sea_scroll, VDP_DATA	| plane B
	vdp_address WRITE_CRAM, 0
	lea	colours, a0
	moveq	#64 / 2 - 1, d0
1:
	move.l	(a0)+, VDP_DATA		| two colours at a time
	dbra	d0, 1b

	clr.b	frame_ready
late:
	movem.l	(sp)+, d0/a0
ignore:
	rte

| Something went wrong: a red picture says so, and there it stops.
fault:
	move.w	#0x2700, sr
	vdp_address WRITE_CRAM, 0
	move.w	#0x000E, VDP_DATA
1:
	bra.s	1b

| -------------------------------------------------------------------- variables

	.data				| with a first value, copied from ROM

lantern_x:	.word	152		| left edge of the lantern, in pixels

| The sprite as the video chip wants it.
sprite_y:	.word	0
		.byte	0x05		| 2 x 2 tiles
		.byte	0		| no further sprite
sprite_look:	.word	IN_FRONT + PALETTE_LANTERN + TILE_LANTERN
sprite_x:	.word	0

| Four palettes of sixteen colours; colour 0 of the first is the sky.
colours:
sky:		rgb	0, 0, 1
		rgb	7, 6, 3		| title: pale gold
		.skip	14 * 2

		rgb	0, 0, 0
		rgb	7, 7, 7		| press start: white
		.skip	14 * 2

		rgb	0, 0, 0
		rgb	5, 6, 7		| foam, and the studio's name
		rgb	0, 2, 4		| water
		.skip	13 * 2

		rgb	0, 0, 0
		rgb	4, 4, 4		| lantern: iron
glass_and_flame:
		rgb	0, 1, 2
		rgb	0, 1, 3
		.skip	12 * 2

	.bss				| these start at 0

frame:		.skip	2		| counts the frames shown
glow:		.skip	2		| how far the sky has brightened, 0-15
sea_scroll:	.skip	2
pad:		.skip	1		| buttons held now
frame_ready:	.skip	1		| 1 = prepared, vertical blank may show it

| ----------------------------------------------------------------------- tables

	.section .rodata, "a"

dark_colours:	rgb	0, 1, 2
		rgb	0, 1, 3
lit_colours:	rgb	7, 4, 0
		rgb	7, 7, 4

sky_colours:	rgb	0, 0, 1		| from night to first light
		rgb	0, 0, 2
		rgb	1, 0, 2
		rgb	1, 1, 2
		rgb	2, 1, 3
		rgb	3, 1, 3
		rgb	3, 2, 2
		rgb	4, 2, 2

| One swell of the tide: 4 + 4 sin(i * 360 / 64 degrees), rounded.
swell:
	.byte	4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 7, 8, 8, 8, 8, 8
	.byte	8, 8, 8, 8, 8, 8, 7, 7, 7, 7, 6, 6, 6, 5, 5, 4
	.byte	4, 4, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0
	.byte	0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 3, 3, 4
