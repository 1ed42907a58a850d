; LANTERN TIDE for the SG-1000, by Quillmoor Softworks, 2026: start, frame and
; pad. 8 KiB from 0x0000 on; there is no header.

	.module lantern
	.include "console.inc"

	.globl draw_picture, tide
	.globl wait_frame, read_pad

PADS      = 0xDC        ; a button that is held reads as 0
STACK_TOP = 0xC400

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

	.org 0x0066             ; pause button
	retn

	.area _CODE             ; linked at 0x0080

start:
	call draw_picture
	jp tide

wait_frame:
	ei
	halt
	di
	ret

read_pad:
	in a, (PADS)            ; bit 2 left, 3 right, 4 button 1
	cpl
	rrca
	rrca
	and #0x07
	ld c, a
	ret
