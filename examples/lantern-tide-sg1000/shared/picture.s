; LANTERN TIDE: the picture and the tide, for consoles with the video chip
; TMS9918A in its mode of 32 columns. Each console brings its start, its frame
; and its pad.
;
; Interrupts of the processor stay off but for the wait, so that no handler
; comes between the two bytes of a command.

	.module picture
	.include "console.inc"

	.globl draw_picture, tide
	.globl wait_frame, read_pad

PATTERNS     = 0x0000   ; in video RAM
NAMES        = 0x1800   ; 32 columns, 24 rows
SPRITES      = 0x1B00
COLORS       = 0x2000   ; one for each eight patterns
SHAPES       = 0x3800
WRITE        = 0x40

TITLE_AT     = NAMES + 4*32 + 10
SEA_AT       = NAMES + 16*32
LANTERN_Y    = 16*8 - 16 - 1
LANTERN_START = 120
RIGHT_EDGE   = 240
DARK         = 14       ; gray
LIT          = 11       ; light yellow
WAVE         = 16

	.area _CODE

draw_picture:
	ld hl, #registers
	ld bc, #(8*256 + 0x80)
set_register:
	ld a, (hl)
	out (VDP_CONTROL), a
	ld a, c
	out (VDP_CONTROL), a
	inc hl
	inc c
	djnz set_register

	ld de, #PATTERNS
	call seek
	ld bc, #0x4000          ; video RAM holds anything at power-on
clear:
	xor a
	out (VDP_DATA), a
	dec bc
	ld a, b
	or c
	jr nz, clear

	ld hl, #letters
	ld de, #(PATTERNS + 8*8)
	ld b, #LETTERS_LENGTH
	call copy
	ld hl, #colors
	ld de, #COLORS
	ld b, #3
	call copy
	ld hl, #lantern
	ld de, #SHAPES
	ld b, #32
	call copy
	ld hl, #title
	ld de, #TITLE_AT
	ld b, #TITLE_LENGTH
	call copy

	ld de, #SEA_AT
	call seek
	ld b, #32               ; the first row is waves
	ld a, #WAVE
	call fill
	ld b, #(7*32)
	inc a
	call fill

	ld a, #LANTERN_START
	ld (lantern_x), a
	ld a, #DARK
	ld (lantern_color), a
	ld a, #0xE2             ; picture on, frame interrupt, sprites of 16 x 16
	out (VDP_CONTROL), a
	ld a, #0x81
	out (VDP_CONTROL), a
	ret

; Never returns.
tide:
	call wait_frame
	ld de, #SPRITES
	call seek
	ld a, #LANTERN_Y
	out (VDP_DATA), a
	ld a, (lantern_x)
	out (VDP_DATA), a
	xor a                   ; its shape
	nop
	out (VDP_DATA), a
	ld a, (lantern_color)
	out (VDP_DATA), a
	ld a, #0xD0             ; no more sprites
	out (VDP_DATA), a

	call read_pad           ; C: bit 0 left, 1 right, 2 the button
	ld a, (lantern_x)
	bit 0, c
	jr z, not_left
	or a
	jr z, not_left
	dec a
not_left:
	bit 1, c
	jr z, not_right
	cp #RIGHT_EDGE
	jr z, not_right
	inc a
not_right:
	ld (lantern_x), a
	ld a, #DARK
	bit 2, c
	jr z, color_known
	ld a, #LIT
color_known:
	ld (lantern_color), a
	jr tide

; HL to video RAM at DE, B bytes
copy:
	call seek
copy_next:
	ld a, (hl)
	out (VDP_DATA), a
	inc hl
	djnz copy_next
	ret

; A to video RAM, B times
fill:
	out (VDP_DATA), a
	nop
	djnz fill
	ret

; DE: where the video chip is to write next
seek:
	ld a, e
	out (VDP_CONTROL), a
	ld a, d
	or #WRITE
	out (VDP_CONTROL), a
	ret

registers:                      ; picture off until it is drawn
	.db 0x00, 0x80, 0x06, 0x80, 0x00, 0x36, 0x07, 0x01

colors:                         ; blank, letters, sea
	.db 0xF1, 0xB1, 0x74

title:                          ; patterns from 8 on: L A N T E R I D
	.db 8, 9, 10, 11, 12, 13, 10, 0, 11, 14, 15, 12
TITLE_LENGTH = . - title

letters:
	.db 0x60, 0x60, 0x60, 0x60, 0x60, 0x60, 0x7E, 0x00   ; L
	.db 0x18, 0x3C, 0x66, 0x66, 0x7E, 0x66, 0x66, 0x00   ; A
	.db 0x66, 0x76, 0x7E, 0x7E, 0x6E, 0x66, 0x66, 0x00   ; N
	.db 0x7E, 0x18, 0x18, 0x18, 0x18, 0x18, 0x18, 0x00   ; T
	.db 0x7E, 0x60, 0x60, 0x7C, 0x60, 0x60, 0x7E, 0x00   ; E
	.db 0x7C, 0x66, 0x66, 0x7C, 0x78, 0x6C, 0x66, 0x00   ; R
	.db 0x3C, 0x18, 0x18, 0x18, 0x18, 0x18, 0x3C, 0x00   ; I
	.db 0x7C, 0x66, 0x66, 0x66, 0x66, 0x66, 0x7C, 0x00   ; D
	.db 0x18, 0x3C, 0xE7, 0xC3, 0x00, 0x00, 0x00, 0x00   ; waves
	.db 0x00, 0x00, 0x00, 0x00, 0x00, 0x40, 0xA0, 0x00   ; the deep
LETTERS_LENGTH = . - letters

lantern:                        ; left half, right half
	.db 0x01, 0x02, 0x02, 0x01, 0x0F, 0x08, 0x09, 0x0B
	.db 0x0B, 0x0B, 0x09, 0x08, 0x0F, 0x07, 0x1F, 0x00
	.db 0x80, 0x40, 0x40, 0x80, 0xF0, 0x10, 0x90, 0xD0
	.db 0xD0, 0xD0, 0x90, 0x10, 0xF0, 0xE0, 0xF8, 0x00
