namespace Cartwright.Patching;

/// <summary>Finds what of a target can be copied, from its base or from itself.</summary>
internal ref struct BpsMatcher
{
    // Enough places to find a good match, few enough that bytes alike everywhere cost no time.
    private const int MostPlaces = 16;

    // Nobody looks for a longer match than this.
    private const int LongEnough = 0x1000;

    private readonly ReadOnlySpan<byte> _image;
    private readonly ReadOnlySpan<byte> _target;
    private readonly MatchIndex _images;
    private readonly MatchIndex _targets;
    private int _indexed;
    private int _literalAt;
    private BpsMatch _best;

    /// <summary>Indexes the base.</summary>
    public BpsMatcher(ReadOnlySpan<byte> image, ReadOnlySpan<byte> target)
    {
        _image = image;
        _target = target;
        _images = new MatchIndex(image.Length);
        _targets = new MatchIndex(target.Length);
        var last = image.Length - MatchIndex.KeySize;
        for (var at = last - (last % _images.Stride); at >= 0; at -= _images.Stride) _images.Add(image, at);
    }

    /// <summary>Where the next copy from the base would begin without a distance.</summary>
    public int ImageAt { get; private set; }

    /// <summary>Where the next copy from the target would begin without a distance.</summary>
    public int TargetAt { get; private set; }

    /// <summary>The end of the last match: where the bytes begin that no match covers so far.</summary>
    public readonly int LiteralAt => _literalAt;

    /// <summary>Takes a match as done.</summary>
    public void Take(BpsMatch match)
    {
        _literalAt = match.To + match.Length;
        if (match.Command == BpsCommand.SourceCopy) ImageAt = match.From + match.Length;
        if (match.Command == BpsCommand.TargetCopy) TargetAt = match.From + match.Length;
    }

    /// <summary>The match at a place that saves most; of no length when there is none.</summary>
    /// <param name="to">The place; not before an earlier one.</param>
    public BpsMatch Best(int to)
    {
        _best = default;
        Try(BpsCommand.SourceRead, to, to);
        Try(BpsCommand.SourceCopy, ImageAt + (to - _literalAt), to);
        Try(BpsCommand.TargetCopy, to - 1, to);
        Try(BpsCommand.TargetCopy, TargetAt + (to - _literalAt), to);
        if (to > _target.Length - MatchIndex.KeySize) return _best;
        for (; _indexed < to; _indexed += _targets.Stride) _targets.Add(_target, _indexed);
        Search(BpsCommand.SourceCopy, _images, to);
        Search(BpsCommand.TargetCopy, _targets, to);
        return _best;
    }

    private void Search(BpsCommand command, MatchIndex index, int to)
    {
        var place = index.First(_target, to);
        for (var left = MostPlaces; left > 0 && place >= 0 && _best.Length < LongEnough; left--)
        {
            Try(command, place, to);
            place = index.Next(place);
        }
    }

    // A match that begins here may begin even earlier, among bytes that no match covers so far.
    private void Try(BpsCommand command, int from, int to)
    {
        var source = command == BpsCommand.TargetCopy ? _target : _image;
        var isThere = from >= 0 && from < source.Length && (command != BpsCommand.TargetCopy || from < to);
        if (!isThere || source[from] != _target[to]) return;
        var length = source[from..].CommonPrefixLength(_target[to..]);
        for (; from > 0 && to > _literalAt && source[from - 1] == _target[to - 1]; length++)
        {
            from--;
            to--;
        }

        if (length <= _best.Gain) return;
        var gain = length - Cost(command, from, length);
        if (gain > _best.Gain) _best = new BpsMatch(command, from, to, length, gain);
    }

    private readonly int Cost(BpsCommand command, int from, int length) => BpsWriter.HeadSize(command, length) + command switch
    {
        BpsCommand.SourceCopy => BpsWriter.DistanceSize(from - ImageAt),
        BpsCommand.TargetCopy => BpsWriter.DistanceSize(from - TargetAt),
        _ => 0,
    };
}
