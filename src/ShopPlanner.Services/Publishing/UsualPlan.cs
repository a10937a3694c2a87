using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Packets;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Packets;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Publishing;

/// <summary>A cut plan of a piece from the sizes that stores usually have, without prices and without anybody's rack: what a
/// stranger would buy, and nothing that tells of a shop.</summary>
internal sealed class UsualPlan
{
    private const string AnyStore = "any store";

    // Longer than this nobody waits for a page; small pieces are proven sooner.
    private static readonly TimeSpan Most = TimeSpan.FromSeconds(1);

    private readonly Piece piece;
    private readonly string name;
    private readonly CutRequest request;

    private UsualPlan(Piece piece, string name)
    {
        (this.piece, this.name) = (piece, name);
        request = PieceRequest.Of(piece);
        Plan = CutPlanner.Plan(request, new SearchControl { Time = Most });
    }

    /// <summary>The plan.</summary>
    public CutPlan Plan { get; }

    /// <summary>Plans a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="name">What it is called.</param>
    public static UsualPlan Of(Piece piece, string name) => new(piece, name);

    /// <summary>What to buy: the material, its size as sold, how many.</summary>
    public IEnumerable<(string Item, string Size, int Quantity)> Purchases()
    {
        foreach (var buy in Plan.Buy)
        {
            var stock = request.Stock.Single(one => one.Id == buy.Stock);
            var material = request.Materials.Single(one => one.Id == stock.Material);
            yield return (
                NameOf(stock.Material),
                StockWords.Size(stock.Length, stock.Width, material.Width, piece.Unit),
                buy.Quantity
            );
        }
    }

    /// <summary>The packet as PDF.</summary>
    public byte[] Packet(PaperSize paper, DateOnly day, WorkChoices choices)
    {
        var view = View();
        var model = new PacketBuilder(view, new PacketFacts(day, paper, "", 1, Basis(view))).Build();
        using var file = new MemoryStream();
        PacketWriter.Write(
            model with
            {
                // Nobody knows what a stranger pays.
                Stores =
                [
                    .. model.Stores.Select(store =>
                        store with
                        {
                            Purchases = [.. store.Purchases.Select(one => one with { Price = null })],
                        }
                    ),
                ],
                Pieces = [PieceSheets.Of(piece, model.Paper) with { Name = name }],
                Work = [PacketSteps.Of(name, Work(choices), model.Paper)],
            },
            file
        );
        return file.ToArray();
    }

    private WorkView Work(WorkChoices choices)
    {
        var work = WorkPlanner.Of(piece, choices);
        return new WorkView(
            Id,
            WorkBasis.Design,
            piece.Unit,
            [.. work.Steps.Select(step => new WorkStepView(step, step.Title, step.Says, StepMark.Open))],
            0
        )
        {
            Piece = piece,
            Choices = choices,
            Subassemblies = work.Subassemblies,
            Finish = work.Finish,
            Findings = work.Findings,
        };
    }

    private PlanView View() =>
        new(
            new PlanSummary(
                Id,
                Bidi.Isolate(name),
                DateTime.UnixEpoch,
                PlanState.Ready,
                Plan.Status,
                Plan.Cost,
                Plan.Layouts.Sum(layout => layout.Copies),
                [Id]
            ),
            new PlanOrder([Id], null, [], UseRack: false, UseBin: false, Seconds: 1, Replaces: []),
            request,
            Plan,
            request.Stock.ToImmutableDictionary(
                stock => stock.Id,
                stock => new PlanStockName(stock.Id, NameOf(stock.Material), null, AnyStore, RoleTint.Of(Role(stock.Material)))
            ),
            request.Parts.ToImmutableDictionary(
                part => part.Id,
                part => new PlanPartName(part.Id, part.Id, Bidi.Isolate(part.Name), Id, Bidi.Isolate(name))
            ),
            [],
            Hash
        )
        {
            Materials = request.Materials.ToImmutableDictionary(one => one.Id, one => NameOf(one.Id)),
        };

    private static PlanBasis Basis(PlanView view) =>
        new(
            view.Summary.Name,
            view.Stocks.ToImmutableSortedDictionary(StringComparer.Ordinal),
            view.Parts.ToImmutableSortedDictionary(StringComparer.Ordinal),
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, Guid>.Empty,
            ImmutableSortedDictionary<string, DateOnly>.Empty,
            view.Materials.ToImmutableSortedDictionary(StringComparer.Ordinal),
            ImmutableSortedDictionary<Guid, LengthUnit>.Empty
        );

    // The same piece has the same id on every paper.
    private string Hash => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CutRequestJson.Write(request))));

    private Guid Id => new(Convert.FromHexString(Hash)[..16]);

    private RoleMaterial Role(string material) => piece.Parts.Select(part => part.Material).First(one => one.Role == material);

    private string NameOf(string material) => Bidi.Isolate(Role(material).Name);
}
