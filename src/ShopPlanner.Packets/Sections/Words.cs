using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>Figures and dates as the packet prints them.</summary>
internal static class Words
{
    /// <summary>A length in the packet's unit, the unit named at the top of every page.</summary>
    public static string Of(Length length, LengthUnit unit) => Figures.Of(length, unit);

    /// <summary>A length at the nearest mark of a ruler in its own unit, which is named where it is not the packet's.</summary>
    public static string Of(Length length, LengthUnit unit, LengthUnit packet) =>
        unit == packet ? Of(length, unit)
        : unit == LengthUnit.Inch ? Of(length, unit) + "″"
        : Of(length, unit) + " mm";

    /// <summary>A setting as a fence or a stop is set to it: <c>11 ¾</c>, <c>just under 11 ¾</c>; a unit that is not the
    /// packet's is named.</summary>
    /// <param name="setting">The exact length.</param>
    /// <param name="takesOff">Whether it measures what is taken off a part.</param>
    /// <param name="unit">Of the figure.</param>
    /// <param name="packet">The packet's unit.</param>
    public static string Setting(Length setting, bool takesOff, LengthUnit unit, LengthUnit packet)
    {
        var figure = takesOff ? RuleFigure.NotMore(setting, unit) : RuleFigure.NotShort(setting, unit);
        return figure.Short(withUnit: unit != packet);
    }

    /// <summary>Length × width.</summary>
    public static string Of(Length length, Length width, LengthUnit unit) => $"{Of(length, unit)} × {Of(width, unit)}";

    /// <summary>Length × width in their own unit, which is named where it is not the packet's.</summary>
    public static string Of(Length length, Length width, LengthUnit unit, LengthUnit packet) =>
        $"{Of(length, unit)} × {Of(width, unit, packet)}";

    /// <summary>The units of a packet's lengths in words.</summary>
    public static string Units(PacketModel model) => Of(model.Unit) + (model.IsMixed ? ", or as marked" : "");

    /// <summary>The day, its month in letters so that no country reads it wrong: <c>Nov 25, 2026</c>.</summary>
    public static string Of(DateOnly day) => day.ToString("MMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>An amount with the shop's currency sign, or a dash where it is not known.</summary>
    public static string Of(Money? amount, string currency) => amount is { } known ? currency + known : "—";

    /// <summary>A whole number.</summary>
    public static string Of(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The unit in words.</summary>
    public static string Of(LengthUnit unit) => unit == LengthUnit.Inch ? "inches" : "millimeters";

    /// <summary>A title that fits an outline and one line of the contents.</summary>
    public static string Title(string words)
    {
        const int most = 120;
        var clean = TextFit.Clean(words, Weight.Bold);
        return clean.Length > most ? clean[..most] + "…" : clean;
    }

    /// <summary>Several marks, none left out.</summary>
    public static string All(IReadOnlyList<string> marks) => MarkRange.All(marks);

    /// <summary>Several marks in a few characters.</summary>
    public static string Of(IReadOnlyList<string> marks) => MarkRange.Of(marks);
}
