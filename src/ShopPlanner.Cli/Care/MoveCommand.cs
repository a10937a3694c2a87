using System.CommandLine;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Moving;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Cli.Care;

/// <summary><c>move server|folder [--data DIR] [--database CONNECTION]</c>: carries a shop between its data folder and a
/// PostgreSQL server.</summary>
internal static class MoveCommand
{
    private const string Server = "server",
        Folder = "folder";

    private static readonly Argument<string> To = Where();

    private static readonly Option<string?> Data = CareOptions.Data();

    private static readonly Option<string?> Database = new("--database")
    {
        Description =
            "The server's database, like Host=SERVER;Database=NAME;Username=USER;Password=SECRET. Default: the environment's "
            + "SHOP_PLANNER_DATABASE.",
        HelpName = "CONNECTION",
    };

    public static Command Create()
    {
        var command = new Command(
            "move",
            "Carries a shop with all its rows from the data folder to a PostgreSQL server, or back. Stop the program first. What "
                + "arrived is read back and compared. Exit status 0: moved; 2: not moved, nothing was changed."
        )
        {
            To,
            Data,
            Database,
        };
        command.SetAction(
            (parsed, cancel) => RunAsync(parsed.GetRequiredValue(To), parsed.GetValue(Data), parsed.GetValue(Database), cancel)
        );
        return command;
    }

    private static Argument<string> Where()
    {
        var where = new Argument<string>("TO") { Description = "Where the shop goes: server or folder." };
        where.AcceptOnlyFromAmong(Server, Folder);
        return where;
    }

    private static async Task<int> RunAsync(string to, string? data, string? database, CancellationToken cancel)
    {
        try
        {
            if (ShopFolder.Server(database) is not { } connection)
                throw new Complaint("move: name the server's database with --database");
            var folder = data is { Length: > 0 } given ? Path.GetFullPath(given) : ShopFolder.Default(demo: false);
            var move = new ShopMove(folder, connection, TimeProvider.System);
            var result = to == Server ? await move.ToServerAsync(cancel) : await move.ToFolderAsync(cancel);
            Console.Out.WriteLine($"Moved {result.Rows} rows. Hash of the shop in both places: {result.Hash}");
            Console.Out.WriteLine(
                to == Server
                    ? $"The file in {folder} stays as it is. From now on start the program with --database."
                    : $"The server's database stays as it is. From now on start the program with --data {folder}."
            );
            return ExitStatus.Done;
        }
        catch (ShopStartException problem)
        {
            throw new Complaint(problem.Message);
        }
    }
}
