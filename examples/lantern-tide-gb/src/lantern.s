; LANTERN TIDE for the Game Boy, by Quillmoor Softworks, 2026.
;
; The title over a night sea, and a lantern that bobs on the tide.
; Left and right carry the lantern; holding START or A lights it, and
; while it burns the sky grows slowly brighter.
;
; Board: MBC5, 32 KiB. Bank 0 holds the program, bank 1 the tide tables.
; 0x0104-0x014F is left out: the header goes there when the cart is built.

	.module lantern
	.include "hardware.inc"

	.globl clear, load_tiles, draw_sea, draw_texts
	.globl swell, sky_shades

; ------------------------------------------------------------ what lies where

SPRITES      = 0xC000   ; copy of the 40 sprites: y, x, tile, attributes
sprite_left  = SPRITES + 0
sprite_right = SPRITES + 4
SPRITES_PAGE = 0xC0

COPY_SPRITES = 0xFF80   ; the sprite copy routine runs from high RAM
frame_ready  = 0xFF90   ; 1 = the next frame is prepared, VBlank may show it
frame        = 0xFF91   ; counts the frames shown, wraps at 256
pad          = 0xFF92   ; buttons held now: Down Up Left Right Start Select B A
glow         = 0xFF93   ; how far the sky has brightened, 0-15
lantern_x    = 0xFF94   ; left edge of the lantern, in pixels
lantern_look = 0xFF95   ; sprite attributes: which palette
sky          = 0xFF96   ; what VBlank puts into BGP

HIGH_RAM_LOW  = 0x80    ; high RAM below the stack: 0xFF80-0xFFBF
HIGH_RAM_SIZE = 0x40

LANTERN_TOP   = 84      ; highest point of the swell
LANTERN_START = 72
LEFT_EDGE     = 8
RIGHT_EDGE    = 136
GLOW_FULL     = 15

SPRITE_Y      = 16      ; a sprite's y and x count from outside the picture
SPRITE_X      = 8

TILE_LANTERN  = 0x04    ; left half 4 over 5, right half 6 over 7

LOOK_DARK     = 0b00000000      ; sprite palette 0
LOOK_LIT      = 0b00010000      ; sprite palette 1

; ------------------------------------------------------------------- vectors

	.area _VECTORS (ABS)

	.org 0x0040             ; VBlank
	jp vblank
	.org 0x0048             ; the others are never allowed: just go back
	reti
	.org 0x0050
	reti
	.org 0x0058
	reti
	.org 0x0060
	reti

	.org 0x0100             ; the console starts here after its own check
	nop
	jp start

; ------------------------------------------------------------------ power on

	.area _CODE             ; linked at 0x0150, behind the header

start:
	di
	ld sp, #STACK_TOP

	; The picture is on when the console hands over. It may be switched off
	; only during vertical blank; anywhere else that can damage the screen
	; of the first models.
	ldh a, (LCDC)
	bit 7, a
	jr z, picture_off
wait_for_blank:
	ldh a, (LY)
	cp #144                 ; its first line: a whole blank lies ahead
	jr nz, wait_for_blank
	xor a
	ldh (LCDC), a
picture_off:
	xor a
	ldh (NR52), a           ; no sound
	ldh (SCX), a
	ldh (SCY), a

	; RAM holds anything at power-on.
	ld hl, #VRAM
	ld bc, #VRAM_SIZE
	call clear
	ld hl, #WRAM
	ld bc, #WRAM_SIZE
	call clear              ; all sprites at y = 0: above the picture
	ld c, #HIGH_RAM_LOW
	ld b, #HIGH_RAM_SIZE
	xor a
clear_high:
	ldh (c), a              ; to 0xFF00 + c
	inc c
	dec b
	jr nz, clear_high

	; The tide tables are in bank 1. Set the bank even though most boards
	; start with it: the reset state is the board's affair.
	ld a, #1
	ld (ROM_BANK_LOW), a
	xor a
	ld (ROM_BANK_HIGH), a

	call load_tiles
	call draw_sea
	call draw_texts
	call load_copy_routine

	ld a, #0b10100100       ; dark lantern: iron light, glass and flame dark
	ldh (OBP0), a
	ld a, #0b00011000       ; lit lantern: iron dark, glass light, flame white
	ldh (OBP1), a
	ld a, (sky_shades)      ; the sky right from the first picture
	ldh (BGP), a
	ld a, #LANTERN_START
	ldh (lantern_x), a
	call COPY_SPRITES       ; sprite memory too holds anything

	xor a
	ldh (IF), a             ; forget what is waiting from before
	ld a, #IE_VBLANK
	ldh (IE), a
	ld a, #LCDC_ON
	ldh (LCDC), a
	ei

; ----------------------------------------------------------------- main loop

main:
	call read_pad
	call move_lantern
	call light_lantern
	call place_lantern
	ld a, #1
	ldh (frame_ready), a    ; everything above is consistent: show it
wait:
	halt                    ; sleep until VBlank
	nop                     ; never fetched twice, whatever halt does
	ldh a, (frame_ready)    ; VBlank clears it when the picture has it
	or a
	jr nz, wait
	jr main

; The pad is a matrix: one half is selected, then its four lines are read. They
; need a moment to settle, so a few reads are thrown away. Pressed reads as 0.
read_pad:
	ld a, #P1_CROSS
	ldh (P1), a
	ldh a, (P1)
	ldh a, (P1)
	cpl
	and #0x0F
	swap a
	ld b, a
	ld a, #P1_BUTTONS
	ldh (P1), a
	ldh a, (P1)
	ldh a, (P1)
	ldh a, (P1)
	ldh a, (P1)
	cpl
	and #0x0F
	or b
	ldh (pad), a
	ld a, #P1_NEITHER
	ldh (P1), a
	ret

move_lantern:
	ldh a, (pad)
	ld b, a
	ldh a, (lantern_x)
	ld c, a
	ld a, b
	and #PAD_LEFT
	jr z, 1$
	ld a, c
	cp #LEFT_EDGE
	jr z, 1$
	dec c
1$:
	ld a, b
	and #PAD_RIGHT
	jr z, 2$
	ld a, c
	cp #RIGHT_EDGE
	jr z, 2$
	inc c
2$:
	ld a, c
	ldh (lantern_x), a
	ret

; The flame follows the button at once, the sky follows over a quarter second.
light_lantern:
	ldh a, (glow)
	ld c, a
	ldh a, (pad)
	and #PAD_START | PAD_A
	jr z, 1$
	ld b, #LOOK_LIT
	ld a, c
	cp #GLOW_FULL
	jr z, 2$
	inc c
	jr 2$
1$:
	ld b, #LOOK_DARK
	ld a, c
	or a
	jr z, 2$
	dec c
2$:
	ld a, b
	ldh (lantern_look), a
	ld a, c
	ldh (glow), a
	srl a
	srl a                   ; 16 steps of glow, 4 skies
	ld hl, #sky_shades
	call look_up
	ldh (sky), a
	ret

; The lantern is 16 x 16 pixels: two sprites of 8 x 16.
place_lantern:
	ldh a, (frame)
	inc a
	ldh (frame), a
	srl a                   ; one step of the swell every second frame
	and #0x3F
	ld hl, #swell
	call look_up
	add a, #LANTERN_TOP + SPRITE_Y
	ld (sprite_left + 0), a
	ld (sprite_right + 0), a
	ldh a, (lantern_x)
	add a, #SPRITE_X
	ld (sprite_left + 1), a
	add a, #8
	ld (sprite_right + 1), a
	ld a, #TILE_LANTERN
	ld (sprite_left + 2), a
	ld a, #TILE_LANTERN + 2
	ld (sprite_right + 2), a
	ldh a, (lantern_look)
	ld (sprite_left + 3), a
	ld (sprite_right + 3), a
	ret

; In: hl = table, a = index. Out: a = table[a].
look_up:
	ld e, a
	ld d, #0
	add hl, de
	ld a, (hl)
	ret

; ------------------------------------------------------------ vertical blank

; The picture's memory may only be touched while nothing is drawn. VBlank comes
; with line 144 and everything here fits into its ten lines.
vblank:
	push af                 ; only A and the flags are used
	ldh a, (frame_ready)
	or a
	jr z, 1$                ; half a frame is worse than the old one
	call COPY_SPRITES
	ldh a, (sky)
	ldh (BGP), a
	xor a
	ldh (frame_ready), a
1$:
	pop af
	reti

; Runs at COPY_SPRITES: during the copy the CPU can reach high RAM only.
copy_routine:
	ld a, #SPRITES_PAGE
	ldh (DMA), a
	ld a, #40
1$:
	dec a                   ; 4 cycles a round, 160 in all
	jr nz, 1$
	ret
copy_routine_end:

load_copy_routine:
	ld hl, #copy_routine
	ld b, #copy_routine_end - copy_routine
	ld c, #HIGH_RAM_LOW
1$:
	ld a, (hl+)
	ldh (c), a
	inc c
	dec b
	jr nz, 1$
	ret
