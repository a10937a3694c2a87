namespace ShopPlanner.Drawing.Layouts;

/// <summary>Says what the crosshatched places of a drawing are.</summary>
public static class BadPlaceNote
{
    /// <summary>What it is called beside its hatching.</summary>
    public const string Legend = "bad place: keep out";

    /// <summary>The legend, for the foot of a drawing; null where there is no bad place.</summary>
    internal static string? Of(LayoutPicture picture) => picture.BadPlaces.IsEmpty ? null : "Crosshatched: bad place, keep out";
}
