using ShopPlanner.Cutting;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Remembers the plans that were proposed last, so that exactly what was seen is what is accepted.</summary>
internal sealed class RestLooks
{
    private const int Most = 32;

    private readonly Lock gate = new();
    private readonly LinkedList<(string Key, string Request, CutPlan Plan)> looks = [];

    /// <summary>Keeps a proposed plan; returns its key.</summary>
    public string Keep(CutRequest request, CutPlan plan)
    {
        var asked = CutDocuments.Hash(CutRequestJson.Write(request));
        var key = CutDocuments.Hash(asked + CutPlanJson.Write(plan));
        lock (gate)
        {
            if (looks.All(look => look.Key != key))
                looks.AddFirst((key, asked, plan));
            if (looks.Count > Most)
                looks.RemoveLast();
        }

        return key;
    }

    /// <summary>Returns a proposed plan; null where it is not known, or was made for another request than this one.</summary>
    public CutPlan? Find(string key, CutRequest request)
    {
        var asked = CutDocuments.Hash(CutRequestJson.Write(request));
        lock (gate)
            return looks.FirstOrDefault(look => look.Key == key && look.Request == asked).Plan;
    }
}
