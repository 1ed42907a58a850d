| LANTERN TIDE for the Vectrex, by Quillmoor Softworks, 2026: a lantern over the
| sea that left and right carry along and that any button lights.
|
| The 6809's code is written byte by byte, each instruction beside its bytes; the
| assembler, one for another processor, only counts and fills in the addresses.
| The header goes in front when the cart is built: 31 bytes with this title.
| Addresses of BIOS routines and variables are from memory.

	.equ	ORIGIN, 0x001F

	.equ	WAIT_RECAL, 0xF192	| waits for the next picture
	.equ	READ_BTNS, 0xF1BA	| buttons to BUTTONS
	.equ	JOY_DIGITAL, 0xF1F8	| stick to STICK_X: below 0 left, above 0 right
	.equ	INTENSITY, 0xF2AB	| brightness in A
	.equ	MOVE_TO, 0xF312		| beam to y in A, x in B
	.equ	RESET_BEAM, 0xF354	| beam to the centre
	.equ	PRINT_TEXT, 0xF37A	| text at U, y in A, x in B
	.equ	DRAW_LINES, 0xF3CE	| list at X: lines less one, then y and x of each

	.equ	BUTTONS, 0xC80F
	.equ	STICK_X, 0xC81B
	.equ	LETTER_SIZE, 0xC82A	| height and width
	.equ	SCALE, 0xD004		| of lines and moves
	.equ	LANTERN_X, 0xC880	| first byte of RAM that the BIOS leaves alone

	.equ	EDGE, 100

	| A relative branch counts from the byte behind it.
	.macro	branch opcode, target
	.byte	\opcode
	.byte	\target - . - 1
	.endm

	| An instruction with the address of a place of this file.
	.macro	with_address opcode, place
	.byte	\opcode
	.byte	(\place - start + ORIGIN) >> 8
	.byte	(\place - start + ORIGIN) & 0xFF
	.endm

	.macro	with_word opcode, word
	.byte	\opcode
	.byte	(\word) >> 8
	.byte	(\word) & 0xFF
	.endm

	.text
start:
	with_word 0x7F, LANTERN_X	| clr LANTERN_X

frame:
	with_word 0xBD, WAIT_RECAL	| jsr WAIT_RECAL
	with_word 0xBD, READ_BTNS	| jsr READ_BTNS
	with_word 0xBD, JOY_DIGITAL	| jsr JOY_DIGITAL

	with_word 0xF6, LANTERN_X	| ldb LANTERN_X
	with_word 0xB6, STICK_X		| lda STICK_X
	branch	0x27, stay		| beq stay
	branch	0x2B, left		| bmi left
	.byte	0xC1, EDGE		| cmpb #EDGE
	branch	0x2C, stay		| bge stay
	.byte	0x5C			| incb
	branch	0x20, stay		| bra stay
left:
	.byte	0xC1, -EDGE & 0xFF	| cmpb #-EDGE
	branch	0x2F, stay		| ble stay
	.byte	0x5A			| decb
stay:
	with_word 0xF7, LANTERN_X	| stb LANTERN_X

	| The sea: one long line, then the title under it.
	.byte	0x86, 0x40		| lda #0x40
	with_word 0xBD, INTENSITY	| jsr INTENSITY
	.byte	0x86, 0x7F		| lda #0x7F
	with_word 0xB7, SCALE		| sta SCALE
	with_word 0xCC, 0xD888		| ldd #y -40, x -120
	with_word 0xBD, MOVE_TO		| jsr MOVE_TO
	with_address 0x8E, sea		| ldx #sea
	with_word 0xBD, DRAW_LINES	| jsr DRAW_LINES

	with_word 0xBD, RESET_BEAM	| jsr RESET_BEAM
	with_word 0xCC, 0xF850		| ldd #height -8, width 80
	with_word 0xFD, LETTER_SIZE	| std LETTER_SIZE
	with_word 0xCC, 0xA0AA		| ldd #y -96, x -86
	with_address 0xCE, title	| ldu #title
	with_word 0xBD, PRINT_TEXT	| jsr PRINT_TEXT

	| The lantern, bright while a button is held.
	.byte	0x86, 0x50		| lda #0x50
	with_word 0x7D, BUTTONS		| tst BUTTONS
	branch	0x27, out		| beq out
	.byte	0x86, 0x7F		| lda #0x7F
out:
	with_word 0xBD, INTENSITY	| jsr INTENSITY
	with_word 0xBD, RESET_BEAM	| jsr RESET_BEAM
	.byte	0x86, 0x7F		| lda #0x7F
	with_word 0xB7, SCALE		| sta SCALE
	.byte	0x86, 0xD8		| lda #-40
	with_word 0xF6, LANTERN_X	| ldb LANTERN_X
	with_word 0xBD, MOVE_TO		| jsr MOVE_TO
	.byte	0x86, 0x20		| lda #0x20
	with_word 0xB7, SCALE		| sta SCALE
	with_address 0x8E, lantern	| ldx #lantern
	with_word 0xBD, DRAW_LINES	| jsr DRAW_LINES
	branch	0x20, frame		| bra frame

	| Lines less one, then how far up and how far to the right each goes.
sea:
	.byte	1
	.byte	0, 120
	.byte	0, 120

lantern:
	.byte	6
	.byte	0, 40			| foot
	.byte	80, 0			| right side
	.byte	30, -20			| roof
	.byte	20, 0			| hook
	.byte	-20, 0
	.byte	-30, -20
	.byte	-80, 0			| left side

title:
	.ascii	"LANTERN TIDE"
	.byte	0x80			| ends a text
