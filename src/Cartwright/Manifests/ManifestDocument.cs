using System.Collections.Immutable;
using Cartwright.Findings;
using Microsoft.Extensions.Configuration;

namespace Cartwright.Manifests;

/// <summary>A JSON file of settings, with every override laid over it and the place of every key kept.</summary>
public sealed class ManifestDocument
{
    /// <summary>Largest file that is read at all, in bytes; a manifest is a page of text.</summary>
    public const int LargestFile = 1 << 20;

    /// <summary>Environment variables that begin with this override a key: <c>CARTWRIGHT__cart__revision=2</c>.</summary>
    public const string EnvironmentPrefix = "CARTWRIGHT__";

    private static readonly byte[] ByteOrderMark = [0xEF, 0xBB, 0xBF];

    private readonly IConfigurationRoot _values;
    private readonly JsonPlaces _places;
    private readonly KeyTree _tree;

    private ManifestDocument(string file, IConfigurationRoot values, JsonPlaces places, KeyTree tree)
    {
        File = file;
        _values = values;
        _places = places;
        _tree = tree;
    }

    /// <summary>The file's name as it is shown in findings.</summary>
    public string File { get; }

    /// <summary>The whole document as a section.</summary>
    public ManifestSection Root => new(this, "");

    /// <summary>Reads a document.</summary>
    /// <param name="file">Its name as it is shown in findings.</param>
    /// <param name="text">Its bytes, UTF-8 JSON; comments and trailing commas are allowed.</param>
    /// <param name="overrides">What is laid over it.</param>
    /// <param name="log">Receives what is wrong.</param>
    /// <returns>Null when the text could not be read whole.</returns>
    public static ManifestDocument? Read(string file, byte[] text, ManifestOverrides overrides, FindingLog log)
    {
        if (text.Length > LargestFile)
        {
            log.Add(ManifestFindings.TooLarge, new SourcePlace(file), $"This file has {ByteSize.Describe(text.Length)}.", $"at most {ByteSize.Describe(LargestFile)} of JSON text");
            return null;
        }

        var json = text.AsSpan().StartsWith(ByteOrderMark) ? text[ByteOrderMark.Length..] : text;
        var places = JsonPlaces.Read(file, json, log);
        return places is null ? null : new ManifestDocument(file, Layers(json, overrides), places, new KeyTree(places.Keys.Concat(overrides.ByKey.Keys)));
    }

    internal string? Text(string key) => _values[key];

    internal ImmutableArray<string> Children(string key) => _tree.Below(key);

    internal SourcePlace Place(string key)
    {
        foreach (var provider in _values.Providers.Reverse())
        {
            if (provider.TryGet(key, out _))
            {
                return provider switch
                {
                    EnvironmentLayer variables => new SourcePlace("environment variable " + variables.NameOf(key), Key: key),
                    SettingsLayer => new SourcePlace("--set " + key, Key: key),
                    _ => _places[key],
                };
            }
        }

        return _places[key];
    }

    private static IConfigurationRoot Layers(byte[] json, ManifestOverrides overrides)
    {
        using var stream = new MemoryStream(json, writable: false);
        return new ConfigurationBuilder()
            .AddJsonStream(stream)
            .Add(new EnvironmentLayer(overrides.Environment))
            .Add(new SettingsLayer(overrides.Settings))
            .Build();
    }

    private sealed class EnvironmentLayer(IReadOnlyDictionary<string, string> variables) : ConfigurationProvider, IConfigurationSource
    {
        private readonly Dictionary<string, string> _names = new(StringComparer.OrdinalIgnoreCase);

        /// <summary>The variable as it is spelled, which matters where letter case does.</summary>
        public string NameOf(string key) => _names[key];

        public IConfigurationProvider Build(IConfigurationBuilder builder) => this;

        public override void Load()
        {
            foreach (var (name, value) in variables)
            {
                if (ManifestOverrides.KeyOf(name) is { } key)
                {
                    Set(key, value);
                    _names[key] = name;
                }
            }
        }
    }

    private sealed class SettingsLayer(IReadOnlyDictionary<string, string> settings) : ConfigurationProvider, IConfigurationSource
    {
        public IConfigurationProvider Build(IConfigurationBuilder builder) => this;

        public override void Load()
        {
            foreach (var (key, value) in settings)
            {
                Set(key, value);
            }
        }
    }
}
