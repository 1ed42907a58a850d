dist/lantern-tide.gb dist/lantern-tide.U1.bin dist/lantern-tide.record.json: cart.json lantern\ tide.hex

cart.json:

lantern\ tide.hex:
