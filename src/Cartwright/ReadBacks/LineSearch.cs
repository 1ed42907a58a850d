using System.Collections.Immutable;

namespace Cartwright.ReadBacks;

/// <summary>Tries wiring faults on samples of words; what survives is worth a comparison of all words.</summary>
internal sealed class LineSearch
{
    private const int QuickSamples = 24;
    private const int FewestSurvivingSamples = 3;
    private const double MostNoise = 0.35;
    private const double MostlyRight = 0.98;

    private readonly ProofCase _case;
    private readonly Samples _samples;
    private readonly ImmutableArray<LineOp> _address;
    private readonly ImmutableArray<LineOp> _data;

    public LineSearch(ProofCase proofCase, Samples samples)
    {
        _case = proofCase;
        _samples = samples;
        _address = LineFaults.Address(proofCase.Expected.AddressLines);
        _data = LineFaults.Data(proofCase.Expected.Shape.Width, proofCase.Expected.AddressLines);
    }

    private WritingWorld World => _case.World;

    /// <summary>One cause: every fault of one line, of two, of a whole bus.</summary>
    public IEnumerable<LineModel> Singles() => _address.Select(Of).Concat(_data.Select(OfData)).Where(Survives);

    /// <summary>One cause that explains some of the wrong words and contradicts hardly any of the right ones.</summary>
    public IEnumerable<LineModel> Hinted() =>
        _address.Select(Of).Concat(_data.Select(OfData)).Where(model => Hits(model, _samples.Right) >= MostlyRight && Hits(model, _samples.Wrong) > 0);

    /// <summary>Seldom ones: lines that follow others, three lines joined, all inverted lines at once.</summary>
    public IEnumerable<LineModel> Seldom()
    {
        var image = _case.Expected;
        var address = LineFaults.SeldomAddress(image.AddressLines).Select(Of);
        var data = World == WritingWorld.WrittenElsewhere ? LineFaults.SeldomData(image.Shape.Width, image.AddressLines).Select(OfData) : [];
        return address.Concat(data).Where(Survives);
    }

    /// <summary>The single faults in the order of how many words they explain, estimated from samples.</summary>
    public ImmutableArray<(LineModel Model, double Share)> Ranked()
    {
        const int Tried = 256;
        var wrong = _samples.Wrong.AsMemory(0, Math.Min(Tried, _samples.Wrong.Length));
        var right = _samples.Right.AsMemory(0, Math.Min(Tried, _samples.Right.Length));
        var wrongShare = (double)_samples.WrongCount / _case.Expected.Count;
        return
        [
            .. _address.Select(Of).Concat(_data.Select(OfData))
                .Select(model => (model, Share: (wrongShare * Hits(model, wrong.Span)) + ((1 - wrongShare) * Hits(model, right.Span))))
                .OrderByDescending(static row => row.Share),
        ];
    }

    /// <summary>Two causes at once.</summary>
    public IEnumerable<LineModel> Pairs() => World == WritingWorld.WrittenElsewhere ? PairsElsewhere() : PairsInPlace();

    /// <summary>Whether a model explains the samples.</summary>
    public bool Survives(LineModel model) => Survives(model, _samples.Wrong) && Survives(model, _samples.Right);

    private LineModel Of(LineOp address) => new([address], [], World);

    private LineModel OfData(LineOp data) => new([], [data], World);

    private bool Survives(LineModel model, uint[] addresses)
    {
        var missed = 0;
        for (var s = 0; s < addresses.Length; s++)
        {
            if (model.At(_case.Expected.Words, _case.Expected.Shape.Ones, addresses[s]) != _case.Read[addresses[s]] && IsTooMany(++missed, s + 1))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsTooMany(int missed, int tried) => _case.Tolerance == 0 || (missed >= FewestSurvivingSamples && missed > MostNoise * tried);

    private double Hits(LineModel model, ReadOnlySpan<uint> addresses)
    {
        var hits = 0;
        foreach (var address in addresses)
        {
            hits += model.At(_case.Expected.Words, _case.Expected.Shape.Ones, address) == _case.Read[address] ? 1 : 0;
        }

        return addresses.IsEmpty ? 0 : (double)hits / addresses.Length;
    }

    private IEnumerable<LineModel> PairsInPlace()
    {
        var quick = _samples.Wrong.AsMemory(0, Math.Min(QuickSamples, _samples.Wrong.Length)).ToArray();
        foreach (var model in AllPairs())
        {
            _case.Cancel.ThrowIfCancellationRequested();
            if (Survives(model, quick) && Survives(model))
            {
                yield return model;
            }
        }
    }

    private IEnumerable<LineModel> AllPairs()
    {
        for (var i = 0; i < _address.Length; i++)
        {
            foreach (var data in _data)
            {
                yield return new LineModel([_address[i]], [data], World);
            }

            for (var j = 0; j < _address.Length; j++)
            {
                if (j > i || !LineFaults.AreApart(_address[i], _address[j]))
                {
                    yield return new LineModel([_address[i], _address[j]], [], World);
                }
            }
        }

        for (var i = 0; i < _data.Length; i++)
        {
            for (var j = 0; j < _data.Length; j++)
            {
                if (j > i || !LineFaults.AreApart(_data[i], _data[j]))
                {
                    yield return new LineModel([], [_data[i], _data[j]], World);
                }
            }
        }
    }

    private List<LineModel> PairsElsewhere()
    {
        var quick = _samples.Wrong[..Math.Min(QuickSamples, _samples.Wrong.Length)];
        var found = new List<LineModel>();
        for (var i = 0; i < _address.Length; i++)
        {
            _case.Cancel.ThrowIfCancellationRequested();
            AddressPairs(i, quick, found);
        }

        for (var i = 0; i < _data.Length; i++)
        {
            _case.Cancel.ThrowIfCancellationRequested();
            DataPairs(i, quick, found);
        }

        return found;
    }

    private void AddressPairs(int i, uint[] quick, List<LineModel> found)
    {
        var words = _case.Expected.Words;
        var first = _address[i];
        Span<uint> behind = stackalloc uint[QuickSamples];
        Span<int> seen = stackalloc int[QuickSamples];
        for (var s = 0; s < quick.Length; s++)
        {
            behind[s] = first.Apply(quick[s], quick[s]);
            seen[s] = behind[s] < words.Length ? words[behind[s]] : -1;
        }

        foreach (ref readonly var data in _data.AsSpan())
        {
            if (FitsData(data, seen, quick) && new LineModel([first], [data], World) is var model && Survives(model))
            {
                found.Add(model);
            }
        }

        for (var j = 0; j < _address.Length; j++)
        {
            if ((j > i || !LineFaults.AreApart(first, _address[j])) && FitsAddress(_address[j], behind, quick)
                && new LineModel([first, _address[j]], [], World) is var model && Survives(model))
            {
                found.Add(model);
            }
        }
    }

    private void DataPairs(int i, uint[] quick, List<LineModel> found)
    {
        Span<int> seen = stackalloc int[QuickSamples];
        for (var s = 0; s < quick.Length; s++)
        {
            seen[s] = (int)_data[i].Apply(_case.Expected.Words[quick[s]], quick[s]);
        }

        for (var j = 0; j < _data.Length; j++)
        {
            if ((j > i || !LineFaults.AreApart(_data[i], _data[j])) && FitsData(_data[j], seen, quick)
                && new LineModel([], [_data[i], _data[j]], World) is var model && Survives(model))
            {
                found.Add(model);
            }
        }
    }

    private bool FitsData(in LineOp data, ReadOnlySpan<int> seen, uint[] quick)
    {
        var missed = 0;
        for (var s = 0; s < quick.Length; s++)
        {
            if ((seen[s] < 0 || data.Apply((uint)seen[s], quick[s]) != _case.Read[quick[s]]) && IsTooMany(++missed, s + 1))
            {
                return false;
            }
        }

        return true;
    }

    private bool FitsAddress(in LineOp address, ReadOnlySpan<uint> behind, uint[] quick)
    {
        var words = _case.Expected.Words;
        var missed = 0;
        for (var s = 0; s < quick.Length; s++)
        {
            var chip = address.Apply(behind[s], quick[s]);
            if ((chip >= words.Length || words[chip] != _case.Read[quick[s]]) && IsTooMany(++missed, s + 1))
            {
                return false;
            }
        }

        return true;
    }
}
