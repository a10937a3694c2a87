using ShopPlanner.Core.Calculators;

namespace ShopPlanner.Benchmarks;

/// <summary>An everyday value for each key that has no default, by the key's name, else by its kind.</summary>
internal static class EverydayValues
{
    private static readonly Dictionary<string, string> ByKey = new(StringComparer.Ordinal)
    {
        ["thickness"] = "3/4 in",
        ["width"] = "12 in",
        ["length"] = "48 in",
        ["height"] = "34 1/2 in",
        ["depth"] = "14 in",
        ["span"] = "32 1/2 in",
        ["member"] = "2 1/2 in",
        ["into"] = "1 1/2 in",
        ["size"] = "1x3",
        ["weight"] = "60 lb",
        ["count"] = "5",
        ["stock"] = "3/4 in",
        ["groove"] = "1/4 in",
        ["strip"] = "1 in",
        ["rest"] = "3/4 in",
    };

    // What must be given, and of optional keys those without which a form asks back.
    public static Dictionary<string, string> Of(WorkingForm form)
    {
        var given = form
            .Keys.Where(key => key is { Default: null, Optional: false })
            .ToDictionary(key => key.Name, Value, StringComparer.Ordinal);
        foreach (var key in AskedBack(form.Name))
            given[key] = ByKey[key];
        return given;
    }

    private static string[] AskedBack(string form) =>
        form switch
        {
            "spacing" => ["count"],
            "groove" => ["groove"],
            "weight" => ["thickness", "width", "length"],
            _ => [],
        };

    private static string Value(FormKey key) =>
        ByKey.TryGetValue(key.Name, out var text) && key.Kind != KeyKind.Choice
            ? text
            : key.Kind switch
            {
                KeyKind.Choice => key.Choices[0].Word,
                KeyKind.Length or KeyKind.LengthOrZero => "12 in",
                KeyKind.Text => "1x3",
                _ => "10",
            };
}
