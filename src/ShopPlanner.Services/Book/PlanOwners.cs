using System.Numerics;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Book;

/// <summary>Whose a line is.</summary>
/// <param name="Project">Null for nobody's.</param>
/// <param name="Name">The project's name; empty for nobody's.</param>
internal sealed record BookOwner(Guid? Project, string Name)
{
    public static readonly BookOwner Nobody = new(null, "");
}

/// <summary>The projects of a plan, and how they share what its boards and sheets come to: by the face area of their parts, as on
/// the plan's page.</summary>
internal sealed class PlanOwners
{
    private PlanOwners(IReadOnlyList<BookOwner> owners, PlanRecord? record) => (Owners, Record) = (owners, record);

    /// <summary>At least one.</summary>
    public IReadOnlyList<BookOwner> Owners { get; }

    /// <summary>The plan's documents; null where they cannot be read.</summary>
    public PlanRecord? Record { get; }

    /// <summary>Reads whose a plan is.</summary>
    /// <param name="stored">The plan.</param>
    /// <param name="plans">Reads its documents.</param>
    /// <param name="names">Of the projects that there are, those in the trash too, by id.</param>
    public static PlanOwners Of(StoredPlan stored, ReadPlans plans, IReadOnlyDictionary<Guid, string> names)
    {
        try
        {
            var record = plans.Read(stored);
            var then = record
                .Draft.Basis.Parts.Values.GroupBy(part => part.ProjectId)
                .ToDictionary(own => own.Key, own => own.First().Project);
            return new(
                [
                    .. record
                        .Draft.Order.Projects.Distinct()
                        .Select(id => new BookOwner(
                            id,
                            names.GetValueOrDefault(id) ?? then.GetValueOrDefault(id) ?? stored.Name
                        )),
                ],
                record
            );
        }
        catch (StoredDocumentException)
        {
            // What it cost was paid all the same.
            return new([BookOwner.Nobody with { Name = stored.Name }], null);
        }
    }

    /// <summary>Returns each owner's weight in what some layouts come to.</summary>
    public IReadOnlyList<BigInteger> Weights(Func<Layout, bool> isMeant)
    {
        if (Record is null)
            return [BigInteger.One];
        var pieces = Record
            .Plan.Layouts.Where(isMeant)
            .SelectMany(layout => layout.Pieces.Select(piece => (piece.Part, Area: Area.Of(piece.Dx, piece.Dy) * layout.Copies)));
        return Weights(pieces);
    }

    /// <summary>Returns each owner's face area of some pieces.</summary>
    public IReadOnlyList<BigInteger> Weights(IEnumerable<(string Part, Area Area)> pieces)
    {
        var own = pieces.ToLookup(piece => Record!.Draft.Basis.Parts[piece.Part].ProjectId, piece => piece.Area);
        return
        [
            .. Owners.Select(owner =>
                owner.Project is { } id
                    ? own[id].Aggregate(BigInteger.Zero, (sum, area) => sum + (BigInteger)area.SquareTicks)
                    : BigInteger.Zero
            ),
        ];
    }
}
