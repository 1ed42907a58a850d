; LANTERN TIDE for the Game Boy: the tide tables, in ROM bank 1.
;
; The linker places this area at 0x14000: bank 1, seen by the CPU at 0x4000.

	.module tides
	.globl swell, sky_shades

	.area _BANK_1

; One swell of the tide: 4 + 4 sin(i * 360 / 64 degrees), rounded.
swell:
	.db 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 7, 8, 8, 8, 8, 8
	.db 8, 8, 8, 8, 8, 8, 7, 7, 7, 7, 6, 6, 6, 5, 5, 4
	.db 4, 4, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0, 0, 0, 0, 0
	.db 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 3, 3, 4

; Shades of the background on the way from night to first light:
; two bits each for colour 3 (letters), 2 (water), 1 (foam), 0 (sky);
; 0 is white, 3 is black.
sky_shades:
	.db 0b00100111          ; black sky, white letters
	.db 0b00110110          ; dark sky over black water
	.db 0b00110110
	.db 0b11100001          ; light sky, black letters
