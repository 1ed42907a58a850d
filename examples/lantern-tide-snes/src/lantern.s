; LANTERN TIDE for the SNES, by Quillmoor Softworks, 2026: the main program.
;
; The title over a night sea that drifts by, and a lantern that bobs on the
; tide. Left and right carry the lantern; holding START, A or B lights it, and
; while it burns the sky grows slowly brighter.
;
; How high the swell is and which colours the sky passes through is written in
; tides.s, a program of its own in bank $01.
;
; Board: LoROM. Throughout, A is 8 bits wide and X and Y are 16 bits wide,
; except between rep #$20 and the next sep #$20.

.p816
.include "hardware.inc"
.include "tides.inc"
.include "screen.inc"

.import clear_picture_memory, load_palettes, load_tiles, draw_sea, draw_texts

.segment "ZEROPAGE"

frame_ready:    .res 1      ; 1 = the next frame is prepared, the NMI may show it
held_low:       .res 1      ; buttons held now, as in JOY1L
held_high:      .res 1      ; and as in JOY1H
lantern_x:      .res 1      ; left edge of the lantern, in pixels
sea_scroll:     .res 1
frame:          .res 2      ; counts the frames shown
glow:           .res 2      ; how far the sky has brightened, 0-15; high byte 0
sky:            .res 2      ; colours the NMI puts into the palette
glass:          .res 2
flame:          .res 2

.segment "BSS"

sprites:        .res 512    ; 128 sprites of 4 bytes: x, y, tile, attributes
sprites_high:   .res 32     ; 2 bits each: size and the ninth bit of x
SPRITE_BYTES    = 512 + 32

LANTERN_TOP     = 156       ; highest point of the swell
LANTERN_START   = 120
LEFT_EDGE       = 8
RIGHT_EDGE      = 232
GLOW_FULL       = 15
OFF_SCREEN      = 240       ; a y below the 224 lines of the picture

.segment "CODE"

; ---------------------------------------------------------------- power on

reset:
        sei                     ; no interrupts while nothing is set up
        clc
        xce                     ; leave the 6502 mode the CPU wakes up in
        rep #$38                ; A, X, Y 16 bits wide, decimal mode off
        .a16
        .i16
        ldx #$1FFF
        txs                     ; the stack grows down from the end of low RAM
        lda #$0000
        tcd                     ; direct page at $0000
        sep #$20
        .a8
        phk
        plb                     ; data bank = this bank, $00

        lda #FORCED_BLANK
        sta INIDISP             ; no picture: its memory is ours to write
        stz NMITIMEN
        stz HDMAEN
        stz MEMSEL
        lda #$FF
        sta WRIO                ; the pads' select lines rest high

        ; The picture registers hold anything at power-on. Some take two
        ; writes, so each gets two.
        ldx #$0000
@quiet:
        stz FIRST_PPU_REGISTER,x
        stz FIRST_PPU_REGISTER,x
        inx
        cpx #PPU_REGISTERS
        bne @quiet
        lda #STEP_AFTER_HIGH
        sta VMAIN
        lda #%11100000          ; all three channels of the added colour to 0
        sta COLDATA

        ; Clear all 128 KiB of work RAM: two transfers of 65536 times the same
        ; zero byte. The stack lies in it, so no subroutine before this.
        stz WMADDL
        stz WMADDL+1
        stz WMADDL+2
        transfer DMA_FIXED, zero, BYTES_65536, WMDATA
        sta MDMAEN              ; again: the count is back at 0, A is still 1

        jsr clear_picture_memory
        jsr load_palettes
        jsr load_tiles
        jsr draw_sea
        jsr draw_texts
        jsr hide_sprites

        stz BGMODE              ; mode 0: backgrounds of 4 colours, 8 x 8 tiles
        lda #>MAP_1 & %11111100 ; map address in its place, one 32 x 32 screen
        sta BG1SC
        lda #>MAP_2 & %11111100
        sta BG2SC
        stz BG12NBA             ; tiles of both from word $0000
        lda #OBSEL_WORD_2000
        sta OBSEL
        lda #TM_BG1_BG2_OBJ
        sta TM

        lda #LANTERN_START
        sta lantern_x
        lda RDNMI               ; drop a vertical blank that is still noted
        lda #NMI_AND_PADS
        sta NMITIMEN

; --------------------------------------------------------------- main loop

main:
        jsr move_lantern
        jsr light_lantern
        jsr place_lantern
        jsr drift
        lda #1
        sta frame_ready         ; everything above is consistent: show it
@wait:
        wai                     ; sleep until the NMI
        lda frame_ready         ; which clears it when the picture has it
        bne @wait
        jsr read_pad
        bra main

; The console itself reads the pads at the start of each vertical blank. The
; NMI's transfers outlast the start of that; here only its end is awaited.
read_pad:
        lda HVBJOY
        lsr                     ; bit 0 to carry: still reading
        bcs read_pad
        lda JOY1L
        sta held_low
        lda JOY1H
        sta held_high
        rts

move_lantern:
        lda held_high
        and #H_LEFT
        beq @not_left
        lda lantern_x
        cmp #LEFT_EDGE
        beq @not_left
        dec lantern_x
@not_left:
        lda held_high
        and #H_RIGHT
        beq @not_right
        lda lantern_x
        cmp #RIGHT_EDGE
        beq @not_right
        inc lantern_x
@not_right:
        rts

; The flame follows the button at once, the sky follows over a quarter second.
light_lantern:
        ldx #DARK
        lda held_low
        and #L_A
        bne @lit
        lda held_high
        and #H_B | H_START
        bne @lit
        lda glow
        beq @colours
        dec glow
        bra @colours
@lit:
        ldx #LIT
        lda glow
        cmp #GLOW_FULL
        beq @colours
        inc glow
@colours:
        rep #$20                ; colours are words
        .a16
        lda glass_colours,x
        sta glass
        lda flame_colours,x
        sta flame
        lda glow
        asl                     ; two bytes a colour
        tax
        lda f:sky_colours,x     ; f: = far, the address carries its bank
        sta sky
        sep #$20
        .a8
        rts

place_lantern:
        rep #$20
        .a16
        lda frame
        lsr                     ; one step of the swell every second frame
        and #SWELL_STEPS - 1
        tax
        sep #$20
        .a8
        lda f:swell,x
        clc
        adc #LANTERN_TOP
        sta sprites+1
        lda lantern_x
        sta sprites+0
        rts

; The sea moves one pixel to the left every fourth frame. Its map is as wide as
; the screen and joins up with itself, so the low byte is the whole position.
drift:
        rep #$20
        .a16
        inc frame
        lda frame
        lsr
        lsr
        sep #$20
        .a8
        sta sea_scroll
        rts

; All sprites below the picture, the first one the large lantern.
hide_sprites:
        lda #OFF_SCREEN
        ldx #$0000
@next:
        sta sprites+1,x
        inx
        inx
        inx
        inx
        cpx #512
        bne @next
        stz sprites+2           ; tile 0: a 16 x 16 sprite takes 0, 1, 16, 17
        lda #%00110000          ; in front of everything, palette 0
        sta sprites+3
        lda #%00000010          ; sprite 0 is of the large size
        sta sprites_high
        rts

; ---------------------------------------------------------- vertical blank

; Picture memory may only be touched while no picture is drawn. The NMI comes
; at the first line of the vertical blank and everything here fits into it.
nmi:
        rep #$30                ; keep both halves of what is used
        .a16
        .i16
        pha
        phx
        sep #$20
        .a8
        lda RDNMI               ; acknowledge
        lda frame_ready
        beq @late               ; half a frame is worse than the old one

        stz OAMADDL
        stz OAMADDL+1
        transfer DMA_ONE_REGISTER, sprites, SPRITE_BYTES, OAMDATA

        stz CGADD               ; colour 0: the sky behind everything
        lda sky
        sta CGDATA
        lda sky+1
        sta CGDATA
        lda #128 + 2            ; sprite palette 0, colours 2 and 3
        sta CGADD
        lda glass
        sta CGDATA
        lda glass+1
        sta CGDATA
        lda flame
        sta CGDATA
        lda flame+1
        sta CGDATA

        lda sea_scroll
        sta BG2HOFS
        stz BG2HOFS

        lda #FULL_BRIGHTNESS    ; the first time round this ends forced blank
        sta INIDISP
        stz frame_ready
@late:
        rep #$30
        .a16
        plx
        pla                     ; rti restores the widths with the flags
unused:                         ; no other interrupt is switched on: just go back
        rti

.segment "RODATA"

; Indexed with DARK or LIT.
DARK    = 0
LIT     = 2
glass_colours:  rgb 2, 4, 8
                rgb 31, 16, 2
flame_colours:  rgb 3, 7, 11
                rgb 31, 30, 18

.segment "VECTORS"

        .word 0, 0              ; native mode
        .word unused            ; COP
        .word unused            ; BRK
        .word unused            ; ABORT
        .word nmi
        .word 0
        .word unused            ; IRQ
        .word 0, 0              ; 6502 mode: only the reset is ever taken
        .word unused            ; COP
        .word 0
        .word unused            ; ABORT
        .word unused            ; NMI
        .word reset
        .word unused            ; IRQ, BRK
