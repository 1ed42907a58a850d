namespace Cartwright.Platforms.GameBoy;

/// <summary>Checks of title, flags and licensees.</summary>
internal static class FieldChecks
{
    private const int OldLicenseeForNew = 0x33;

    public static void Run(GameBoyCart cart)
    {
        CheckTitle(cart);
        CheckColor(cart);
        CheckLicensees(cart);
        CheckFiller(cart);
    }

    private static void CheckTitle(GameBoyCart cart)
    {
        var title = cart.Title;
        var raw = cart.Field("title")!.Raw.AsSpan().TrimEnd((byte)0);
        if (raw.IsEmpty)
        {
            cart.Add(GameBoyFindings.NoTitle, "title", "The title is empty.");
        }
        else if (raw.ContainsAnyExceptInRange((byte)0x20, (byte)0x7E))
        {
            cart.Add(GameBoyFindings.NoText, "title", $"The title is `{title}`.");
        }
        else
        {
            CheckLetters(cart, title);
        }

        if (cart.Field("manufacturerCode") is { } code && !TitleForm.LooksLikeCode(cart.Header(0)))
        {
            cart.Add(GameBoyFindings.CodeHidden, "manufacturerCode", $"The manufacturer code `{code.Text}` stands behind the title `{title}`.");
        }
    }

    private static void CheckLetters(GameBoyCart cart, string title)
    {
        if (title.AsSpan().ContainsAnyInRange('a', 'z'))
        {
            cart.Add(GameBoyFindings.LowerCase, "title", $"The title is `{title}`.");
        }

        if (title.EndsWith(' '))
        {
            cart.Add(GameBoyFindings.Blanks, "title", $"The title is `{title}`.");
        }
    }

    private static void CheckColor(GameBoyCart cart)
    {
        if (cart.Field("cgbFlag") is not null && cart.Value("cgbFlag") is not (0x00 or 0x80 or 0xC0))
        {
            cart.AddByte(GameBoyFindings.OddFlag, "cgbFlag", "neither 0x00, 0x80 nor 0xC0");
        }
    }

    private static void CheckLicensees(GameBoyCart cart)
    {
        var old = cart.Value("oldLicensee");
        var given = cart.Field("newLicensee")!.Raw.AsSpan().ContainsAnyExcept((byte)0);
        if (cart.Value("sgbFlag") == 0x03 && old != OldLicenseeForNew)
        {
            cart.AddByte(GameBoyFindings.SgbIgnored, "oldLicensee", "the SGB flag is set, and is read only with 0x33");
        }

        if (given && old != OldLicenseeForNew)
        {
            cart.AddByte(GameBoyFindings.Licensee, "oldLicensee", "there is a new licensee, and it is read only with 0x33");
        }

        if (!given && old == OldLicenseeForNew)
        {
            cart.AddByte(GameBoyFindings.Licensee, "oldLicensee", "it sends readers to the new licensee, which is empty");
        }
    }

    private static void CheckFiller(GameBoyCart cart)
    {
        if (cart.Value("sgbFlag") is not (0x00 or 0x03))
        {
            cart.AddByte(GameBoyFindings.Filler, "sgbFlag", "neither 0x00 nor 0x03");
        }

        // 0xD1 and 0xE1 are marks proposed to loaders.
        if (cart.Value("destination") is not (0x00 or 0x01 or 0xD1 or 0xE1))
        {
            cart.AddByte(GameBoyFindings.Filler, "destination", "neither 0x00 nor 0x01");
        }

        if (cart.Value("version") == 0xFF)
        {
            cart.AddByte(GameBoyFindings.Filler, "version", "what erased memory holds");
        }
    }
}
