namespace Cartwright.TestImages;

/// <summary>Every bank holds places to write its number to: some that agree with it, some that hold 0x00, some that hold 0xFF.</summary>
public static class ConflictImage
{
    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes, a whole number of banks.</param>
    /// <param name="bankSize">Bytes of a bank.</param>
    public static byte[] Make(int size, int bankSize)
    {
        var image = new byte[size];
        var banks = size / bankSize;
        for (var bank = 0; bank < banks; bank++)
        {
            var own = image.AsSpan(bank * bankSize, bankSize);
            own[..(bankSize / 4)].Fill((byte)bank);
            own[(bankSize / 2)..].Fill(0xFF);
            BankTag.Write(bank, banks, own);
        }

        return image;
    }
}
