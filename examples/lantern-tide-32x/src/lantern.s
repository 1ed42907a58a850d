| LANTERN TIDE for the 32X, by Quillmoor Softworks, 2026: the 68000's part.
|
| It lets the SH-2 processors go and then hands them the pad, over and over.
| Vectors at 0, jumps at 0x200, module header at 0x3C0, program from 0x800. Left
| out are 0x100-0x1FF, where the header goes when the cart is built, and
| 0x3F0-0x7FF, the start-up block, which is the user's to bring.
| The adapter's registers are from memory.

PAD_1		= 0xA10003	| rw: the first pad's data lines
PAD_1_CTRL	= 0xA10009	| rw: which of them are outputs
PAD_SELECT	= 0x40		| the line that selects half of the buttons
VDP_CONTROL	= 0xC00004
FROM_MASTER	= 0xA15120	| rw: words that both sides see
FROM_SLAVE	= 0xA15124
TO_MASTER	= 0xA1512C

START_UP	= 0x3F0
CODE_AT		= 0x1000	| of the SH-2 program, from the ROM's start
SH2_RAM		= 0x06000000

| -------------------------------------------------------------------- vectors

	.section .vectors, "a"

	.long	0x01000000	| stack: the first push goes to 0xFFFFFC
	.rept	63
	.long	START_UP
	.endr

| With the adapter on, exceptions come here, six bytes each.
	.section .jumps, "ax"

	.rept	62
	jmp	start
	.endr

	.section .module, "a"

	.ascii	"MARS CHECK MODE "
	.long	0		| version
	.long	CODE_AT
	.long	0		| to the start of their RAM
	.long	sh2_end - sh2_program
	.long	SH2_RAM + 0x240	| master, behind both tables of vectors
	.long	SH2_RAM + 0x244	| slave
	.long	SH2_RAM
	.long	SH2_RAM + 0x120

| -------------------------------------------------------------------- program

	.text
	.globl	start
start:
	move.w	#0x2700, %sr
1:	cmp.l	#0x4D5F4F4B, FROM_MASTER	| "M_OK"
	bne	1b
2:	cmp.l	#0x535F4F4B, FROM_SLAVE		| "S_OK"
	bne	2b
	clr.l	FROM_SLAVE
	clr.l	FROM_MASTER			| off they go

	move.b	#PAD_SELECT, PAD_1_CTRL
	move.w	#0x8004, VDP_CONTROL
	move.w	#0x8144, VDP_CONTROL		| display on
	move.w	#0x8C81, VDP_CONTROL		| 320 dots

frame:
	move.b	#PAD_SELECT, PAD_1		| half with B, C and the directions
	nop
	nop
	move.b	PAD_1, %d0
	not.b	%d0				| what is held reads as 0
	and.w	#0x3F, %d0
	move.w	%d0, TO_MASTER
	move.w	#1000, %d1			| leaves the bus to the others for a while
3:	dbra	%d1, 3b
	bra	frame

	.section .sh2, "a"

sh2_program:
	.incbin	"sh2.bin"
	.balign	4
sh2_end:
