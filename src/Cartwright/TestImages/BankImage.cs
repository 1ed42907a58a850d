namespace Cartwright.TestImages;

/// <summary>Every bank holds its number.</summary>
public static class BankImage
{
    /// <summary>Makes the image.</summary>
    /// <param name="size">Size in bytes.</param>
    /// <param name="bankSize">Bytes of a bank, at least three tags; the last bank may be shorter.</param>
    public static byte[] Make(int size, int bankSize)
    {
        var image = new byte[size];
        var banks = (size + bankSize - 1) / bankSize;
        for (var bank = 0; bank < banks; bank++)
        {
            var own = image.AsSpan(bank * bankSize, Math.Min(bankSize, size - (bank * bankSize)));
            own.Fill((byte)bank);
            BankTag.Write(bank, banks, own);
            BankTag.Write(bank, banks, own[(own.Length / 2)..]);
            BankTag.Write(bank, banks, own[^BankTag.Length..]);
        }

        return image;
    }
}
