namespace ShopPlanner.Scheduling.Networks;

/// <summary>The earliest and the latest start of each task by its precedences and the windows alone.</summary>
internal sealed class Spans
{
    private readonly Network network;

    private Spans(Network network)
    {
        this.network = network;
        Earliest = new int[network.Nodes.Length];
        Latest = new int[network.Nodes.Length];
    }

    public int[] Earliest { get; }

    public int[] Latest { get; }

    /// <summary>The first task in the order of work that has no start left; null where each has one.</summary>
    public int? Without { get; private set; }

    /// <summary>Works them out.</summary>
    /// <param name="network">Without a circle.</param>
    /// <param name="deadlines">The minute that the hold of each priority's tasks must end by.</param>
    public static Spans Of(Network network, IReadOnlyList<int> deadlines)
    {
        var spans = new Spans(network);
        spans.Forward();
        if (spans.Without is null)
            spans.Backward(deadlines);
        return spans;
    }

    private void Forward()
    {
        foreach (var i in network.Order)
        {
            var node = network.Nodes[i];
            if (node.Task.Fixed is { } done)
            {
                Earliest[i] = done.Start;
                continue;
            }

            var from = Math.Max(0, node.Task.NotBefore);
            foreach (var link in node.Before)
                from = Math.Max(from, network.Finish(link.Task, Earliest[link.Task]) + link.Wait);
            var wanted = Math.Max(from, node.Task.Begins ?? 0);
            if (
                network.Axis.EarliestStart(wanted, node.Labor, node.IsSplit) is not { } start
                || start != (node.Task.Begins ?? start)
            )
            {
                Without = i;
                return;
            }

            Earliest[i] = start;
        }
    }

    private void Backward(IReadOnlyList<int> deadlines)
    {
        foreach (var i in network.Order.Reverse())
        {
            var node = network.Nodes[i];
            if (node.Task.Fixed is { } done)
            {
                Latest[i] = done.Start;
                continue;
            }

            var finish = node.After.Select(link => Latest[link.Task] - link.Wait).Append(deadlines[node.Level]).Min();
            if (network.Axis.LatestStart(finish - node.Hold, node.Labor, node.IsSplit) is { } start && start >= Earliest[i])
                Latest[i] = node.Task.Begins ?? start;
            else
                (Latest[i], Without) = (Earliest[i] - 1, Without ?? i);
        }
    }
}
