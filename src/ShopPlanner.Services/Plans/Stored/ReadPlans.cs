using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>
/// Keeps the documents of the plans that were read last. They never change once stored, and reading one of a shop with a full
/// bin takes longer than all else on its page. What is kept is known by the texts themselves: a text that differs is read.
/// </summary>
internal sealed class ReadPlans
{
    /// <summary>Most plans kept: half a megabyte each where a thousand pieces lie in the bin.</summary>
    public const int Most = 64;

    private readonly Lock gate = new();
    private readonly Dictionary<Guid, Kept> plans = [];
    private long uses;

    /// <summary>How many are kept.</summary>
    public int Count
    {
        get
        {
            lock (gate)
                return plans.Count;
        }
    }

    /// <summary>A plan with its documents, kept or read.</summary>
    /// <exception cref="StoredDocumentException">One of them is damaged, or newer than this program.</exception>
    public PlanRecord Read(StoredPlan stored)
    {
        var (draft, plan) = Of(stored, Documents);
        return new(stored, draft, plan);
    }

    /// <summary>A plan's documents, kept or read.</summary>
    /// <param name="stored">The plan.</param>
    /// <param name="read">Reads them.</param>
    public (PlanDraft Draft, CutPlan Plan) Of(StoredPlan stored, Func<StoredPlan, (PlanDraft Draft, CutPlan Plan)> read)
    {
        var texts = Hash(stored);
        lock (gate)
            if (plans.TryGetValue(stored.Id, out var kept) && kept.Texts.AsSpan().SequenceEqual(texts.AsSpan()))
            {
                kept.Used = ++uses;
                return kept.Documents;
            }

        var documents = read(stored);
        lock (gate)
        {
            plans[stored.Id] = new Kept(texts, documents) { Used = ++uses };
            if (plans.Count > Most)
                plans.Remove(plans.MinBy(pair => pair.Value.Used).Key);
        }

        return documents;
    }

    private static (PlanDraft Draft, CutPlan Plan) Documents(StoredPlan stored) =>
        (
            new PlanDraft(
                PlanOrderDocument.Read(stored.OrderJson),
                CutDocuments.ReadRequest(stored.RequestJson),
                PlanNamesDocument.Read(stored.NamesJson),
                []
            ),
            CutDocuments.ReadPlan(stored.PlanJson)
        );

    private static ImmutableArray<byte> Hash(StoredPlan stored)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in (ReadOnlySpan<string>)[stored.OrderJson, stored.RequestJson, stored.NamesJson, stored.PlanJson])
        {
            hash.AppendData(BitConverter.GetBytes(text.Length));
            hash.AppendData(MemoryMarshal.AsBytes(text.AsSpan()));
        }

        return [.. hash.GetHashAndReset()];
    }

    private sealed class Kept(ImmutableArray<byte> texts, (PlanDraft Draft, CutPlan Plan) documents)
    {
        public ImmutableArray<byte> Texts => texts;

        public (PlanDraft Draft, CutPlan Plan) Documents => documents;

        public long Used { get; set; }
    }
}
