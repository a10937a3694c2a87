using System.Text;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Services.Plans;

/// <summary>Plans and their requests as documents of the open cut file formats.</summary>
internal static class PlanDocuments
{
    public static string Request(PlanView plan) => Write(to => CutRequestWriter.Write(plan.Request, to));

    public static string Plan(PlanView plan) => Write(to => CutPlanWriter.Write(plan.Plan, to));

    private static string Write(Action<Stream> write)
    {
        using var file = new MemoryStream();
        write(file);
        return Encoding.UTF8.GetString(file.ToArray());
    }
}
