using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Web.Features.Projects;

/// <summary>A row of the parts list as the page holds it: what was typed, and what is stored.</summary>
public sealed class SheetRow(Guid id)
{
    private static readonly PartTexts Empty = new(Guid.Empty, "", "", "", "", "", "", false, "");

    /// <summary>Never changes, so that the cursor stays where it is when the row is stored.</summary>
    public Guid Id { get; } = id;

    /// <summary>As typed, stored or not yet.</summary>
    public PartTexts Texts { get; private set; } = Empty with { Id = id };

    /// <summary>As stored; null for the empty last row.</summary>
    public PartRow? Stored { get; private set; }

    /// <summary>What another device put there while this one typed; null when there is no conflict.</summary>
    public PartRow? Theirs { get; private set; }

    /// <summary>Whether another device took the row out while this one typed.</summary>
    public bool IsGone { get; private set; }

    /// <summary>Whether there is something to save.</summary>
    public bool IsDirty { get; private set; }

    /// <summary>Rises with every change, so that rows that did not change are not drawn again.</summary>
    public int Stamp { get; private set; }

    /// <summary>Whether the row has nothing in it.</summary>
    public bool IsBlank => Texts == Empty with { Id = Id, CanTurn = Texts.CanTurn };

    /// <summary>What is wrong with what is stored; nothing while newer typing waits to be saved.</summary>
    public ImmutableArray<Fault> Faults => Stored?.Faults ?? [];

    /// <summary>What a cell shows: as typed, but a material that was understood by its name.</summary>
    public string Shown(PartColumn column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return
            column.List is not null
            && Stored is { } stored
            && stored.Texts.Material == Texts.Material
            && stored.MaterialName.Length > 0
            ? stored.MaterialName
            : column.Get(Texts);
    }

    /// <summary>What is stored of a cell, as it is shown.</summary>
    public string Kept(PartColumn column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return Stored is not { } stored ? ""
            : column.List is not null && stored.MaterialName.Length > 0 ? stored.MaterialName
            : column.Get(stored.Texts);
    }

    /// <summary>Up to which text of the browser each cell has come.</summary>
    public CellCounts Counts { get; } = new();

    /// <summary>Rises when the browser is to let go of what it keeps for this row.</summary>
    public int Round { get; private set; }

    /// <summary>Lets this device's typing go.</summary>
    public void LetGo() => Round++;

    /// <summary>Sees that the row is drawn again.</summary>
    public void Touch() => Stamp++;

    /// <summary>Whether a person must choose between two values.</summary>
    public bool IsContested => Theirs is not null || IsGone;

    /// <summary>Takes typing in.</summary>
    public void Type(PartTexts texts)
    {
        if (texts == Texts)
            return;
        (Texts, IsDirty) = (texts, true);
        Stamp++;
    }

    /// <summary>Takes what is stored; typing that came after <paramref name="sent"/> stays and waits for the next save.</summary>
    public void Store(PartRow row, PartTexts? sent = null)
    {
        var typedSince = IsDirty && Texts != sent;
        if (IsSame(row) && !IsDirty && !IsContested)
            return;
        Stored = row;
        if (!typedSince)
            (Texts, IsDirty) = (row.Texts, false);
        (Theirs, IsGone) = (null, false);
        Stamp++;
    }

    /// <summary>Notes that somebody else was first.</summary>
    /// <param name="theirs">The row as it is now; null when it was deleted.</param>
    public void Contest(PartRow? theirs)
    {
        (Theirs, IsGone, IsDirty) = (theirs, theirs is null, false);
        Stamp++;
    }

    /// <summary>Chooses this device's value: it is saved over the other.</summary>
    public void KeepMine()
    {
        (Stored, Theirs, IsGone, IsDirty) = (Theirs, null, false, true);
        Stamp++;
    }

    // A record's arrays are equal only when they are one array, so what is shown is compared.
    private bool IsSame(PartRow row) =>
        Stored is { } stored
        && stored.Version == row.Version
        && stored.Texts == row.Texts
        && stored.MaterialName == row.MaterialName
        && stored.Part == row.Part
        && stored.Faults.SequenceEqual(row.Faults);

    /// <summary>The edit to save.</summary>
    public PartEdit ToEdit() => new(Texts, Stored?.Version);
}
