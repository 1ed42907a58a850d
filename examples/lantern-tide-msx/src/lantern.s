; LANTERN TIDE for the MSX, by Quillmoor Softworks, 2026: start, frame and pad.
; 8 KiB from 0x4000 on; the header before 0x4010 is written when the cart is
; built.

	.module lantern
	.include "console.inc"

	.globl draw_picture, tide
	.globl wait_frame, read_pad

GTSTCK = 0x00D5         ; A: 0 cursor keys, 1 joystick; 0, or 1-8 clockwise from up
GTTRIG = 0x00D8         ; A: 0 space bar, 1 joystick; 0, or 255 when held

	.area _CODE             ; linked at 0x4010

start:                          ; INIT: the BIOS calls it and has set the stack
	di
	call draw_picture
	jp tide

wait_frame:                     ; the BIOS reads the video chip's status
	ei
	halt
	di
	ret

read_pad:
	ld c, #0
	push bc
	xor a
	call GTSTCK
	pop bc
	or a
	jr nz, direction_known
	push bc
	inc a
	call GTSTCK
	pop bc
direction_known:
	cp #6
	jr c, no_left           ; 6, 7 and 8 go left
	set 0, c
	jr no_right
no_left:
	cp #2                   ; 2, 3 and 4 go right
	jr c, no_right
	cp #5
	jr nc, no_right
	set 1, c
no_right:
	push bc
	xor a
	call GTTRIG
	pop bc
	or a
	ret z
	set 2, c
	ret
