; LANTERN TIDE for the ColecoVision, by Quillmoor Softworks, 2026: start, frame
; and pad. 8 KiB from 0x8000 on.
;
; Of the header only the addresses are here; mark, restart slots and title are
; written when the cart is built.

	.module lantern
	.include "console.inc"

	.globl draw_picture, tide
	.globl wait_frame, read_pad

JOYSTICK_MODE = 0xC0    ; any write: the pad shows its stick, not its keys
PAD           = 0xFC    ; what is held reads as 0
STACK_TOP     = 0x7400

	.area _HEADER (ABS)

	.org 0x800A
	.dw start
	.org 0x8021
	jp frame

	.area _CODE             ; linked at 0x8080, behind header and title

start:
	di
	ld sp, #STACK_TOP
	call draw_picture
	jp tide

frame:                          ; once a frame, and nothing can hold it off
	push af
	in a, (VDP_CONTROL)     ; lets go of the interrupt
	pop af
	retn

wait_frame:
	halt
	ret

read_pad:
	out (JOYSTICK_MODE), a
	in a, (PAD)             ; bit 1 right, 3 left, 6 the left button
	cpl
	ld b, a
	ld c, #0
	bit 3, b
	jr z, no_left
	set 0, c
no_left:
	bit 1, b
	jr z, no_right
	set 1, c
no_right:
	bit 6, b
	ret z
	set 2, c
	ret
