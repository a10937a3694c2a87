using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>
/// Reads a form of the bench field by field. A field that is missing, repeated or no value of its kind is a fault.
/// </summary>
internal sealed class BenchForm(IFormCollection fields)
{
    private const string Missing = "is missing: open the page again and repeat";

    private readonly List<Fault> faults = [];

    /// <summary>The faults of the fields read so far.</summary>
    public ImmutableArray<Fault> Faults => [.. faults];

    /// <summary>The names of the fields.</summary>
    public IEnumerable<string> Names => fields.Keys;

    /// <summary>Whether there is such a field.</summary>
    public bool Has(string name) => fields.ContainsKey(name);

    /// <summary>Returns an id; empty with a fault where there is none.</summary>
    public Guid Id(string name) =>
        Wanted(name) is not { } text ? Guid.Empty
        : Guid.TryParse(text, out var id) ? id
        : Wrong(name, text, "is not an ID of Shop Planner", Guid.Empty);

    /// <summary>Returns a whole number; zero with a fault where there is none.</summary>
    public int Number(string name) =>
        Wanted(name) is not { } text ? 0
        : int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number
        : Wrong(name, text, "is not a whole number", 0);

    /// <summary>Returns <c>true</c> or <c>false</c>; false with a fault where there is neither.</summary>
    public bool Flag(string name) => Wanted(name) is { } text && Flag(name, text);

    /// <summary>Returns a flag that a browser leaves out where it is off.</summary>
    public bool Box(string name) => Has(name) && Flag(name);

    /// <summary>Returns a text as typed; null where there is none.</summary>
    public string? Text(string name) => Has(name) ? Wanted(name) : null;

    /// <summary>Returns a part of a board or sheet, as <see cref="Text(StockArea)"/> writes it; null where there is
    /// none.</summary>
    public StockArea? Area(string name)
    {
        if (!Has(name) || Wanted(name) is not { } text)
            return null;
        var ticks = text.Split(' ').Select(one => long.TryParse(one, CultureInfo.InvariantCulture, out var tick) ? tick : -1);
        return ticks.ToList() is [>= 0 and var x, >= 0 and var y, >= 0 and var dx, >= 0 and var dy]
            ? new(Length.FromTicks(x), Length.FromTicks(y), Length.FromTicks(dx), Length.FromTicks(dy))
            : Wrong<StockArea?>(name, text, "isn't a part of a board or sheet", null);
    }

    /// <summary>Returns the text of a part of a board or sheet for a field that nobody sees.</summary>
    public static string Text(StockArea area) =>
        string.Create(CultureInfo.InvariantCulture, $"{area.X.Ticks} {area.Y.Ticks} {area.Dx.Ticks} {area.Dy.Ticks}");

    /// <summary>Notes that the form says something that it cannot say.</summary>
    public void Refuse(string name, string message) => faults.Add(Fault.Of(name, null, message));

    private bool Flag(string name, string text) =>
        bool.TryParse(text, out var flag) ? flag : Wrong(name, text, "is neither true nor false", false);

    private string? Wanted(string name)
    {
        if (fields[name] is [var text])
            return text ?? "";
        Refuse(name, Has(name) ? "was sent twice: open the page again and repeat" : Missing);
        return null;
    }

    private T Wrong<T>(string name, string text, string message, T instead)
    {
        faults.Add(Fault.Of(name, text, message + ": open the page again and repeat"));
        return instead;
    }
}
