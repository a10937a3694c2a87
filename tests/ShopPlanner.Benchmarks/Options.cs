using System.Globalization;

namespace ShopPlanner.Benchmarks;

/// <summary>The command line was written wrongly; the message says what would be right.</summary>
public sealed class UsageException(string message) : Exception(message);

/// <summary>What was written after the command's name: one path, options with a value, options without.</summary>
public sealed class Options
{
    private readonly Dictionary<string, string> values = new(StringComparer.Ordinal);
    private readonly HashSet<string> flags = new(StringComparer.Ordinal);

    private Options(string path) => Path = path;

    /// <summary>A file or a folder, absolute.</summary>
    public string Path { get; private set; }

    /// <summary>Reads the words, refusing any option that is not among those named.</summary>
    public static Options Parse(IReadOnlyList<string> words, IReadOnlyList<string> withValue, IReadOnlyList<string> flags)
    {
        var options = Read(words, withValue, flags);
        if (options.Path.Length == 0)
            throw new UsageException("Name a .jsonl file, or a folder of them.");
        if (!File.Exists(options.Path) && !Directory.Exists(options.Path))
            throw new UsageException($"There is no file or folder {options.Path}.");
        return options;
    }

    /// <summary>The same for a command that takes no path.</summary>
    public static Options ParseWithoutPath(
        IReadOnlyList<string> words,
        IReadOnlyList<string> withValue,
        IReadOnlyList<string> flags
    )
    {
        var options = Read(words, withValue, flags);
        if (options.Path.Length > 0)
            throw new UsageException($"No path is wanted here: '{options.Path}'.");
        return options;
    }

    public bool Has(string flag) => flags.Contains(flag);

    public string? Text(string name) => values.GetValueOrDefault(name);

    public double Number(string name, double otherwise)
    {
        if (Text(name) is not { } text)
            return otherwise;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= 0)
            return number;
        throw new UsageException($"--{name} wants a number, zero or more, not '{text}'.");
    }

    public int Whole(string name, int otherwise)
    {
        if (Text(name) is not { } text)
            return otherwise;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return number;
        throw new UsageException($"--{name} wants a whole number, not '{text}'.");
    }

    private static Options Read(IReadOnlyList<string> words, IReadOnlyList<string> withValue, IReadOnlyList<string> flags)
    {
        var options = new Options("");
        for (var i = 0; i < words.Count; i++)
            i += options.Take(words, i, withValue, flags);
        return options;
    }

    private int Take(IReadOnlyList<string> words, int at, IReadOnlyList<string> withValue, IReadOnlyList<string> flags)
    {
        var word = words[at];
        if (!word.StartsWith("--", StringComparison.Ordinal))
        {
            if (Path.Length > 0)
                throw new UsageException($"One path is enough: '{Path}' or '{word}'?");
            Path = System.IO.Path.GetFullPath(word);
            return 0;
        }

        var name = word[2..];
        if (flags.Contains(name))
        {
            this.flags.Add(name);
            return 0;
        }

        if (!withValue.Contains(name))
            throw new UsageException($"'{word}' is unknown; there are {Known(withValue, flags)}.");
        if (at + 1 >= words.Count)
            throw new UsageException($"'{word}' wants a value after it.");
        values[name] = words[at + 1];
        return 1;
    }

    private static string Known(IEnumerable<string> withValue, IEnumerable<string> flags) =>
        string.Join(", ", withValue.Concat(flags).Select(name => "--" + name));
}
