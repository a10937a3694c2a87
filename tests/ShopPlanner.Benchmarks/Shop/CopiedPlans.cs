using Microsoft.Data.Sqlite;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Benchmarks;

/// <summary>Copies stored plans for other projects whose parts lists are alike: ids of projects and rows are put in the place
/// of the first ones, whatever the documents look like.</summary>
internal sealed class CopiedPlans : IDisposable
{
    private const string When = "2026-05-02 09:30:00";

    private readonly SqliteConnection connection;
    private readonly SqliteTransaction transaction;

    public CopiedPlans(string file)
    {
        connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        transaction = connection.BeginTransaction();
    }

    /// <summary>Adds copies. Of ten plans two are ready, one is begun, five are cut and two were given up.</summary>
    public void Add(IReadOnlyList<PlanView> plans, IReadOnlyList<PartSheet> sheets, int copies)
    {
        for (var i = 0; i < copies; i++)
        {
            var like = i % plans.Count;
            var sheet = sheets[((i / plans.Count * plans.Count) + like) % (sheets.Count / plans.Count * plans.Count)];
            var state = "RRbcccccgg"[i % 10];
            var id = Copy(plans[like], sheets[like], sheet, 1_000 + i, state);
            if (state is 'b' or 'c')
                Tick(id, plans[like], all: state == 'c');
        }

        transaction.Commit();
    }

    public void Dispose()
    {
        transaction.Dispose();
        connection.Dispose();
    }

    private string Copy(PlanView plan, PartSheet from, PartSheet to, int number, char state)
    {
        var (id, row) = (Text(Guid.CreateVersion7()), Read(plan.Summary.Id));
        foreach (var column in row.Keys.ToList())
            if (row[column] is string text)
                row[column] = Replaced(text, from, to);
        (row["Id"], row["Number"]) = (id, number);
        row["State"] = state switch
        {
            'R' => 0,
            'b' => 1,
            'c' => 2,
            _ => 3,
        };
        Insert("Plans", row);
        foreach (var (position, project) in plan.Order.Projects.Index())
            Insert(
                "PlanProjects",
                new()
                {
                    ["PlanId"] = id,
                    ["ProjectId"] = Text(project == from.ProjectId ? to.ProjectId : project),
                    ["Position"] = position,
                }
            );
        return id;
    }

    private static string Replaced(string text, PartSheet from, PartSheet to)
    {
        text = text.Replace(from.ProjectId.ToString(), to.ProjectId.ToString(), StringComparison.Ordinal);
        foreach (var (old, other) in from.Rows.Zip(to.Rows))
            text = text.Replace(old.Texts.Id.ToString(), other.Texts.Id.ToString(), StringComparison.Ordinal);
        return text;
    }

    // Of a plan that is begun, every second board is finished.
    private void Tick(string plan, PlanView like, bool all)
    {
        for (var layout = 0; layout < like.Plan.Layouts.Length; layout++)
        for (var copy = 1; copy <= like.Plan.Layouts[layout].Copies; copy++)
        {
            if (!all && layout % 2 == 1)
                continue;
            foreach (var cut in like.Plan.Layouts[layout].Cuts)
                Insert(
                    "CutTicks",
                    new()
                    {
                        ["PlanId"] = plan,
                        ["Layout"] = layout,
                        ["Copy"] = copy,
                        ["Cut"] = cut.N,
                        ["Made"] = 1,
                    }
                );
            Insert(
                "Finishes",
                new()
                {
                    ["Id"] = Text(Guid.CreateVersion7()),
                    ["PlanId"] = plan,
                    ["Layout"] = layout,
                    ["Copy"] = copy,
                    ["Standing"] = 1,
                }
            );
        }
    }

    private Dictionary<string, object> Read(Guid plan)
    {
        using var command = Command("SELECT * FROM Plans WHERE Id = $id");
        command.Parameters.AddWithValue("$id", Text(plan));
        using var reader = command.ExecuteReader();
        reader.Read();
        return Enumerable.Range(0, reader.FieldCount).ToDictionary(reader.GetName, reader.GetValue);
    }

    private void Insert(string table, Dictionary<string, object> row)
    {
        if (table is "CutTicks" or "Finishes")
            (row["WhenUtc"], row["Device"]) = (When, "benchmark");
        var names = row.Keys.ToList();
        using var command = Command(
            $"INSERT INTO {table} ({string.Join(", ", names)}) VALUES ({string.Join(", ", names.Select((_, i) => $"${i}"))})"
        );
        for (var i = 0; i < names.Count; i++)
            command.Parameters.AddWithValue($"${i}", row[names[i]]);
        command.ExecuteNonQuery();
    }

    private SqliteCommand Command(string text)
    {
        var command = connection.CreateCommand();
        (command.CommandText, command.Transaction) = (text, transaction);
        return command;
    }

    // As ids stand in the database.
    private static string Text(Guid id) => id.ToString().ToUpperInvariant();
}
