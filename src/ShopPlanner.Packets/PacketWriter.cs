using System.Collections.Immutable;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Pdf;
using ShopPlanner.Packets.Sections;

namespace ShopPlanner.Packets;

/// <summary>Prints a packet: the sections that were asked for, each going on where the former ended.</summary>
public static class PacketWriter
{
    /// <summary>Writes a PDF. The same model gives the same bytes.</summary>
    /// <param name="model">What to print.</param>
    /// <param name="stream">Receives the file; left open.</param>
    public static void Write(PacketModel model, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(model);
        var pages = Pages(model);
        var subject = model.Plan is { } plan
            ? $"Packet of cut plan {Words.Of(plan.Version)}, {plan.Id}"
            : "Packet without a cut plan";
        PdfFile.Write(new(string.Join(", ", model.Projects), subject, model.Date, model.Plan?.Id ?? ""), pages, stream);
    }

    /// <summary>The pages as drawings in points, before they become a file.</summary>
    public static ImmutableArray<Page> Pages(PacketModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var flow = new PageFlow(model.Paper);
        var sections = SectionList.Of(model);
        TitleBlock.Add(flow, model);
        if (model.Sections.Contains(PacketSection.Cover))
            CoverSection.Add(flow, model, sections);
        foreach (var section in sections)
            section.Add?.Invoke(flow);
        return PageFrame.Finish(flow, model);
    }
}
