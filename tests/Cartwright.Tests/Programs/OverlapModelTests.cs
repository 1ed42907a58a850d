using System.Text;
using Cartwright.Programs;
using Xunit;

namespace Cartwright.Tests.Programs;

/// <summary>Records thrown at a few addresses, against the plainest possible model: a dictionary of bytes.</summary>
public sealed class OverlapModelTests
{
    private const int Cases = 2000;

    // These explain a clash in other words and stand in its place.
    private static readonly string[] Patterns = [ProgramFindings.AddressesCountWords.Code, ProgramFindings.SerialList.Code];

    [Fact]
    public void Overlaps_are_settled_as_a_map_of_bytes_settles_them()
    {
        var random = new Random(4);
        var accepted = 0;
        for (var i = 0; i < Cases; i++)
        {
            var (records, model, isClash, isRepeat) = Throw(random);
            var reading = Reading.Of("game.hex", Encoding.ASCII.GetBytes(Records.Lines([.. records, Records.HexEnd])));
            if (reading.Codes.Any(Patterns.Contains)) continue;
            Assert.Equal(isClash, reading.Program is null);
            if (reading.Program is null) continue;
            accepted++;
            Assert.Equal(isRepeat, reading.Codes.Contains(ProgramFindings.OverlapSame.Code));
            Assert.Equal(model, reading.Program.Segments.SelectMany(s => s.Bytes.ToArray().Select((value, at) => KeyValuePair.Create(s.Address + at, value))));
        }

        Assert.InRange(accepted, Cases / 10, Cases - (Cases / 10));
    }

    private static (List<string> Records, SortedDictionary<long, byte> Model, bool IsClash, bool IsRepeat) Throw(Random random)
    {
        var (records, model, isClash, isRepeat) = (new List<string>(), new SortedDictionary<long, byte>(), false, false);
        for (var count = random.Next(1, 8); count > 0; count--)
        {
            var address = random.Next(24);
            var data = new byte[random.Next(1, 12)];
            for (var i = 0; i < data.Length; i++)
            {
                data[i] = random.Next(12) == 0 ? (byte)random.Next(3) : (byte)(address + i);
                if (model.TryAdd(address + i, data[i])) continue;
                isRepeat = true;
                isClash |= model[address + i] != data[i];
            }

            records.Add(Records.Hex(0, address, data));
        }

        return (records, model, isClash, isRepeat);
    }
}
