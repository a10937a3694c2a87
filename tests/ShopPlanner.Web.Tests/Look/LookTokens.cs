using System.Text.RegularExpressions;

namespace ShopPlanner.Web.Tests.Look;

/// <summary>The colours of <c>styles/tokens.css</c>.</summary>
/// <param name="Light">By name without the dashes.</param>
/// <param name="Dark">By name without the dashes.</param>
internal sealed partial record LookTokens(IReadOnlyDictionary<string, string> Light, IReadOnlyDictionary<string, string> Dark)
{
    /// <summary>Reads the file's text.</summary>
    /// <exception cref="InvalidDataException">The file lacks a block of colours.</exception>
    public static LookTokens Read(string css) => new(Colours(css, LightBlock()), Colours(css, SwitchedDarkBlock()));

    /// <summary>The colours that follow the system's wish for dark; the same as <see cref="Dark"/>.</summary>
    internal static IReadOnlyDictionary<string, string> ReadSystemDark(string css) => Colours(css, SystemDarkBlock());

    private static Dictionary<string, string> Colours(string css, Regex block)
    {
        var match = block.Match(css);
        if (!match.Success)
            throw new InvalidDataException($"tokens.css has no block of colours like {block}");
        return Colour()
            .Matches(match.Groups["body"].Value)
            .ToDictionary(m => m.Groups["name"].Value, m => m.Groups["value"].Value);
    }

    [GeneratedRegex(@"^:root \{(?<body>[^}]*)\}", RegexOptions.Multiline)]
    private static partial Regex LightBlock();

    [GeneratedRegex(@":root\[data-look=""dark""\] \{(?<body>[^}]*)\}")]
    private static partial Regex SwitchedDarkBlock();

    [GeneratedRegex(@":root:not\(\[data-look=""light""\]\) \{(?<body>[^}]*)\}")]
    private static partial Regex SystemDarkBlock();

    [GeneratedRegex(@"--(?<name>[a-z-]+):\s*(?<value>#[0-9A-Fa-f]{6})\s*;")]
    private static partial Regex Colour();
}
