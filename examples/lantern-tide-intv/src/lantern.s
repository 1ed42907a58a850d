| LANTERN TIDE for the Intellivision, by Quillmoor Softworks, 2026: a title, the
| sea, and a lantern on it that the disc carries to the left and right and that
| the side buttons light.
|
| The CP1610's code is written word by word, each instruction beside its words; the
| assembler, one for another processor, only counts and fills in the addresses,
| which count words. Every word fits 10 bits. Instructions, the console's addresses
| and its characters are from memory.

	.equ	ORIGIN, 0x5022

	.equ	SCREEN, 0x200		| 12 rows of 20 cards
	.equ	SCREEN_END, 0x2F0
	.equ	TITLE_ROW, SCREEN + 2 * 20 + 4
	.equ	LAMP_ROW, SCREEN + 8 * 20
	.equ	SEA_ROW, SCREEN + 9 * 20

	.equ	ISR_LOW, 0x100		| where the EXEC looks for the handler, a byte a word
	.equ	ISR_HIGH, 0x101
	.equ	FRAMES, 0x1D0		| byte of RAM: counts pictures
	.equ	PICTURE_ON, 0x20	| any write: show the picture
	.equ	COLOR_STACK, 0x21	| any read: colors by stack
	.equ	PAD, 0x1FF		| disc and buttons; what is held reads as 0

	| A card: number of the character, and a color.
	.equ	BLUE, 1
	.equ	TAN, 3
	.equ	YELLOW, 6
	.equ	WHITE, 7
	.equ	WAVE, ('=' - ' ') * 8 + BLUE
	.equ	LAMP_OUT, ('*' - ' ') * 8 + TAN
	.equ	LAMP_LIT, ('*' - ' ') * 8 + YELLOW

	| A branch forward counts from the word behind it; one back likewise, less one.
	.macro	forward opcode, target
	.word	\opcode
	.word	(\target - . - 2) / 2
	.endm

	.macro	back opcode, target
	.word	\opcode + 0x20
	.word	(. + 2 - \target) / 2 - 1
	.endm

	| The words of an address are given in two bytes behind SDBD, to fit 10 bits.
	.macro	load_address register, place
	.word	0x0001			| sdbd
	.word	0x02B8 + \register	| mvii #place, register
	.word	((\place - start) / 2 + ORIGIN) & 0xFF
	.word	((\place - start) / 2 + ORIGIN) >> 8
	.endm

	.text
start:
	.word	0x0003			| dis

	.word	0x02BC, SCREEN		| mvii #SCREEN, r4
	.word	0x01C0			| clrr r0
clear:
	.word	0x0260			| mvo@ r0, r4
	.word	0x037C, SCREEN_END	| cmpi #SCREEN_END, r4
	back	0x020C, clear		| bneq clear

	.word	0x02BC, TITLE_ROW	| mvii #TITLE_ROW, r4
	load_address 5, title		| mvii #title, r5
letter:
	.word	0x02A8			| mvi@ r5, r0
	.word	0x0080			| tstr r0
	forward	0x0204, letters_done	| beq letters_done
	.word	0x0260			| mvo@ r0, r4
	back	0x0200, letter		| b letter
letters_done:

	.word	0x02BC, SEA_ROW		| mvii #SEA_ROW, r4
	.word	0x02B8, WAVE		| mvii #WAVE, r0
wave:
	.word	0x0260			| mvo@ r0, r4
	.word	0x037C, SCREEN_END	| cmpi #SCREEN_END, r4
	back	0x020C, wave		| bneq wave

	load_address 0, picture		| mvii #picture, r0
	.word	0x0240, ISR_LOW		| mvo r0, ISR_LOW
	.word	0x0040			| swap r0
	.word	0x0240, ISR_HIGH	| mvo r0, ISR_HIGH
	.word	0x02BB, LAMP_ROW + 10	| mvii #LAMP_ROW + 10, r3
	.word	0x0002			| eis

	| Once in eight pictures.
frame:
	.word	0x0280, FRAMES		| mvi FRAMES, r0
same:
	.word	0x0340, FRAMES		| cmp FRAMES, r0
	back	0x0204, same		| beq same
	.word	0x03B8, 7		| andi #7, r0
	back	0x020C, frame		| bneq frame

	.word	0x01C0			| clrr r0
	.word	0x0258			| mvo@ r0, r3: away with the old one
	.word	0x0281, PAD		| mvi PAD, r1
	.word	0x0019			| comr r1

	.word	0x0088			| movr r1, r0
	.word	0x03B8, 8		| andi #8, r0: disc to the left
	forward	0x0204, no_left		| beq no_left
	.word	0x037B, LAMP_ROW	| cmpi #LAMP_ROW, r3
	forward	0x0204, no_left		| beq no_left
	.word	0x0013			| decr r3
no_left:
	.word	0x0088			| movr r1, r0
	.word	0x03B8, 2		| andi #2, r0: disc to the right
	forward	0x0204, no_right	| beq no_right
	.word	0x037B, LAMP_ROW + 19	| cmpi #LAMP_ROW + 19, r3
	forward	0x0204, no_right	| beq no_right
	.word	0x000B			| incr r3
no_right:
	.word	0x02B8, LAMP_OUT	| mvii #LAMP_OUT, r0
	.word	0x03B9, 0xE0		| andi #0xE0, r1: side buttons
	forward	0x0204, draw		| beq draw
	.word	0x02B8, LAMP_LIT	| mvii #LAMP_LIT, r0
draw:
	.word	0x0258			| mvo@ r0, r3
	back	0x0200, frame		| b frame

	| Called by the EXEC at the start of each vertical blank.
picture:
	.word	0x0240, PICTURE_ON	| mvo r0, PICTURE_ON
	.word	0x0280, COLOR_STACK	| mvi COLOR_STACK, r0
	.word	0x0280, FRAMES		| mvi FRAMES, r0
	.word	0x0008			| incr r0
	.word	0x0240, FRAMES		| mvo r0, FRAMES
	.word	0x00AF			| jr r5

	.macro	card letter
	.word	(\letter - ' ') * 8 + WHITE
	.endm

title:
	card	'L'
	card	'A'
	card	'N'
	card	'T'
	card	'E'
	card	'R'
	card	'N'
	card	' '
	card	'T'
	card	'I'
	card	'D'
	card	'E'
	.word	0			| ends it
