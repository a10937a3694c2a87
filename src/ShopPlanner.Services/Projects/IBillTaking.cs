using System.Collections.Immutable;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Projects;

/// <summary>What a line of a written bill was taken for.</summary>
public enum BillLineKind
{
    /// <summary>A part.</summary>
    Part,

    /// <summary>A title, or a heading that sets something for the lines below it.</summary>
    Heading,

    /// <summary>Not a part: it is kept in the project's note.</summary>
    Note,
}

/// <summary>A line of a written bill beside what was understood.</summary>
/// <param name="Line">Where it begins in the text, from 1.</param>
/// <param name="Kind">What it was taken for.</param>
/// <param name="AsWritten">Its words.</param>
/// <param name="Understood">What was understood, in plain words; empty where nothing was.</param>
/// <param name="Doubts">What is not certain, a sentence each.</param>
public sealed record BillLine(int Line, BillLineKind Kind, string AsWritten, string Understood, ImmutableArray<string> Doubts);

/// <summary>A written bill as it was read. Nothing is stored.</summary>
/// <param name="Lines">Every line of the text that says anything, in order.</param>
/// <param name="Remarks">What holds for the bill as a whole.</param>
/// <param name="Parts">How many rows it adds to the parts list.</param>
public sealed record BillPreview(ImmutableArray<BillLine> Lines, ImmutableArray<string> Remarks, int Parts)
{
    /// <summary>Lines with a doubt.</summary>
    public int Doubtful => Lines.Count(line => !line.Doubts.IsEmpty);
}

/// <summary>Takes parts out of stock bills as books and notes have them.</summary>
public interface IBillTaking
{
    /// <summary>Reads a bill as it would be taken; faulty where no line of it is a part.</summary>
    Task<Outcome<BillPreview>> PreviewAsync(Guid projectId, string text, CancellationToken cancel = default);

    /// <summary>Adds the bill's parts at the end of the list, as one step to undo. A doubt, a size as bought and whatever else a
    /// line says are in its row's note; what is not told stays blank. Hardware and other lines that are no parts are added to the
    /// project's note in the same transaction; refused where it has no room for them.</summary>
    Task<Outcome<PartSheet>> AddBillAsync(Guid projectId, string text, CommandId command, CancellationToken cancel = default);
}
