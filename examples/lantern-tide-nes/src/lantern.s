; LANTERN TIDE for the NES, by Quillmoor Softworks, 2026.
;
; The title over a night sea, and a lantern that bobs on the tide.
; Left and right carry the lantern; holding START or A lights it, and
; while it burns the sky grows slowly brighter.
;
; Board: NROM-128 (mapper 0), 16 KiB program, 8 KiB tiles, vertical mirroring.

.include "hardware.inc"

.import load_palettes, clear_screens, draw_sea, draw_texts

.segment "ZEROPAGE"

frame_ready:  .res 1        ; 1 = the next frame is prepared, the NMI may show it
frame:        .res 1        ; counts the frames shown, wraps at 256
pad:          .res 1        ; buttons held now: A B Select Start Up Down Left Right
glow:         .res 1        ; how far the sky has brightened, 0-15
lantern_x:    .res 1        ; left edge of the lantern, in pixels
lantern_y:    .res 1        ; top edge of the lantern
sky:          .res 1        ; colours the NMI puts into the palette
glass:        .res 1
flame:        .res 1

.segment "OAM"

sprites:      .res 256      ; 64 sprites of 4 bytes: y, tile, attributes, x

LANTERN_TOP   = 164         ; highest point of the swell
LANTERN_START = 120
LEFT_EDGE     = 8
RIGHT_EDGE    = 232
GLOW_FULL     = 15

.segment "CODE"

; ---------------------------------------------------------------- power on

reset:
        sei                     ; no interrupts while nothing is set up
        cld                     ; this CPU has no decimal mode: keep the flag clear
        ldx #%01000000
        stx APU_FRAME           ; or the sound unit would raise interrupts
        ldx #$FF
        txs                     ; the stack is page 1, growing down from $01FF
        inx                     ; X = 0
        stx PPUCTRL             ; no NMI yet
        stx PPUMASK             ; picture off: its memory is ours to write
        stx DMC_FREQ

        ; The picture unit needs about a frame to warm up and ignores some
        ; writes until then. Two vertical blanks are long enough. The first
        ; read drops a flag that may be left over from before the reset.
        bit PPUSTATUS
@first_blank:
        bit PPUSTATUS           ; bit 7 goes to the N flag
        bpl @first_blank

        txa                     ; A = 0; RAM holds anything at power-on
@clear_ram:                     ; all of it but page 2, which comes next
        sta $0000,x
        sta $0100,x             ; the stack too: nothing is on it yet
        sta $0300,x
        sta $0400,x
        sta $0500,x
        sta $0600,x
        sta $0700,x
        inx
        bne @clear_ram

        lda #$FF                ; y = 255 is below the picture: sprite hidden
@hide_sprites:
        sta sprites,x
        inx
        bne @hide_sprites

@second_blank:
        bit PPUSTATUS
        bpl @second_blank

        jsr load_palettes
        jsr clear_screens
        jsr draw_sea
        jsr draw_texts

        lda #LANTERN_START
        sta lantern_x
        lda #CTRL_NMI | CTRL_SPRITES_1000
        sta PPUCTRL

; --------------------------------------------------------------- main loop

main:
        jsr read_pad
        jsr move_lantern
        jsr light_lantern
        jsr place_lantern
        inc frame
        lda #1
        sta frame_ready         ; everything above is consistent: show it
@wait:
        lda frame_ready         ; the NMI clears it when the picture has it
        bne @wait
        jmp main

; The pad is a shift register: a pulse on the latch freezes the buttons, then
; each read brings the next one. Bit 0 is the wired pad, bit 1 the expansion
; port's, so either may press. The 1 put into pad first falls out of the top
; after eight reads, which ends the loop without a counter.
read_pad:
        lda #1
        sta PAD_1
        sta pad
        lsr a                   ; A = 0
        sta PAD_1
@next:
        lda PAD_1
        and #%00000011
        cmp #1                  ; carry = either bit is set
        rol pad
        bcc @next
        rts

move_lantern:
        lda pad
        and #BUTTON_LEFT
        beq @not_left
        lda lantern_x
        cmp #LEFT_EDGE
        beq @not_left
        dec lantern_x
@not_left:
        lda pad
        and #BUTTON_RIGHT
        beq @not_right
        lda lantern_x
        cmp #RIGHT_EDGE
        beq @not_right
        inc lantern_x
@not_right:
        rts

; The flame follows the button at once, the sky follows over a quarter second.
light_lantern:
        ldy #0                  ; 0 = dark, 1 = lit
        lda pad
        and #BUTTON_START | BUTTON_A
        beq @dark
        iny
        lda glow
        cmp #GLOW_FULL
        beq @colours
        inc glow
        bne @colours            ; always: glow is at least 1 now
@dark:
        lda glow
        beq @colours
        dec glow
@colours:
        lda glass_colours,y
        sta glass
        lda flame_colours,y
        sta flame
        lda glow
        lsr a
        lsr a                   ; 16 steps of glow, 4 sky colours
        tax
        lda sky_colours,x
        sta sky
        rts

; The lantern is 16 x 16 pixels: four sprites, placed around one corner.
place_lantern:
        lda frame
        lsr a                   ; one step of the swell every second frame
        and #%00111111
        tax
        lda swell,x
        clc
        adc #LANTERN_TOP - 1    ; a sprite appears one line below its y
        sta lantern_y
        ldx #0                  ; place in the sprite list
        ldy #0                  ; which quarter, and its tile number
@quarter:
        lda lantern_y
        clc
        adc quarter_y,y
        sta sprites+0,x
        tya
        sta sprites+1,x
        lda #0                  ; sprite palette 0, in front, not mirrored
        sta sprites+2,x
        lda lantern_x
        clc
        adc quarter_x,y
        sta sprites+3,x
        inx
        inx
        inx
        inx
        iny
        cpy #4
        bne @quarter
        rts

; ---------------------------------------------------------- vertical blank

; Picture memory may only be touched while no picture is drawn. The NMI comes
; at the first line of the vertical blank and everything here fits into it.
nmi:
        pha                     ; only A is used, so only A is kept
        lda frame_ready
        beq @late               ; half a frame is worse than the old one

        lda #0
        sta OAMADDR
        lda #>sprites
        sta OAMDMA              ; the CPU stops while 256 bytes are copied

        bit PPUSTATUS           ; the next PPUADDR write is the high byte
        lda #>PALETTES
        sta PPUADDR
        lda #<PALETTES
        sta PPUADDR
        lda sky
        sta PPUDATA
        lda #>PALETTES
        sta PPUADDR
        lda #<PALETTES + $12    ; sprite palette 0, colours 2 and 3
        sta PPUADDR
        lda glass
        sta PPUDATA
        lda flame
        sta PPUDATA

        ; PPUADDR and the scroll position share one register inside the
        ; chip, so the scroll has to be set again after every upload.
        lda #CTRL_NMI | CTRL_SPRITES_1000
        sta PPUCTRL
        lda #0
        sta PPUSCROLL
        sta PPUSCROLL
        lda #MASK_SHOW_ALL      ; the first time round this turns the picture on
        sta PPUMASK

        lda #0
        sta frame_ready
@late:
        pla
irq:                            ; no interrupt is switched on: just go back
        rti

.segment "RODATA"

sky_colours:    .byte $0F, $01, $03, $13    ; black, navy, dusk, violet
glass_colours:  .byte $0C, $27              ; dark, lit
flame_colours:  .byte $1C, $38

quarter_x:      .byte 0, 8, 0, 8
quarter_y:      .byte 0, 0, 8, 8

; One swell of the tide: 4 + 4 sin(i * 360 / 64 degrees), rounded.
swell:
        .byte 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 7, 8, 8, 8, 8, 8
        .byte 8, 8, 8, 8, 8, 8, 7, 7, 7, 7, 6, 6, 6, 5, 5, 4
        .byte 4, 4, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0
        .byte 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 3, 3, 4

.segment "VECTORS"

        .word nmi
        .word reset
        .word irq
