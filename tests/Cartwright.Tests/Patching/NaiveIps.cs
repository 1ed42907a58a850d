namespace Cartwright.Tests.Patching;

/// <summary>IPS byte by byte, straight from the description of the format. Null when the patch is malformed.</summary>
internal static class NaiveIps
{
    public static byte[]? Apply(byte[] image, byte[] patch)
    {
        if (patch.Length < 5 || System.Text.Encoding.ASCII.GetString(patch, 0, 5) != "PATCH") return null;
        // A mark counts as the end when nothing or a length follows; if no such end is reached, the first mark counts.
        return Run(image, patch, careful: true) ?? Run(image, patch, careful: false);
    }

    private static byte[]? Run(byte[] image, byte[] patch, bool careful)
    {
        var output = new List<byte>(image);
        var at = 5;
        while (at + 3 <= patch.Length)
        {
            var left = patch.Length - at - 3;
            if (patch[at] == 'E' && patch[at + 1] == 'O' && patch[at + 2] == 'F' && (!careful || left is 0 or 3))
            {
                var length = left == 3 ? Number(patch, at + 3, 3) : output.Count;
                return [.. output.Take(length)];
            }

            if (at + 5 > patch.Length) return null;
            var offset = Number(patch, at, 3);
            var size = Number(patch, at + 3, 2);
            at += 5;
            if (size > 0)
            {
                if (at + size > patch.Length) return null;
                for (var i = 0; i < size; i++) Put(output, offset + i, patch[at++]);
                continue;
            }

            if (at + 3 > patch.Length || Number(patch, at, 2) == 0) return null;
            for (var i = 0; i < Number(patch, at, 2); i++) Put(output, offset + i, patch[at + 2]);
            at += 3;
        }

        return null;
    }

    private static void Put(List<byte> output, int at, byte value)
    {
        if (output.Count <= at) output.AddRange(new byte[at + 1 - output.Count]);
        output[at] = value;
    }

    private static int Number(byte[] bytes, int at, int count)
    {
        var value = 0;
        for (var i = 0; i < count; i++) value = (value * 256) + bytes[at + i];
        return value;
    }
}
