using System.Security.Cryptography;
using System.Text;
using Npgsql;

namespace ShopPlanner.Services.Tests.Server;

/// <summary>The server that keeps the tests' shops, started when it is first asked for and ended with the tests.</summary>
internal static class TestServer
{
    private static readonly Lazy<PostgresServer> Server = new(Start);
    private static readonly HashSet<string> Made = [];

    /// <summary>Whether it keeps the shops of all tests, and not those alone that ask for it.</summary>
    public static bool KeepsAll { get; } = Environment.GetEnvironmentVariable("SHOP_PLANNER_TEST_STORE") == "server";

    /// <summary>The connection to a database of its own for a data folder: the same as often as it is asked.</summary>
    public static string For(string folder)
    {
        var name = "shop_" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(folder)))[..24];
        lock (Made)
            if (Made.Add(name))
                Server.Value.Ask($"CREATE DATABASE {name}");
        return Server.Value.To(name);
    }

    /// <summary>Removes the database of a folder.</summary>
    public static void Drop(string folder)
    {
        var name = new NpgsqlConnectionStringBuilder(For(folder)).Database!;
        lock (Made)
            Made.Remove(name);
        Server.Value.Ask($"DROP DATABASE {name} WITH (FORCE)");
    }

    private static PostgresServer Start()
    {
        var server = new PostgresServer(isDurable: false);
        AppDomain.CurrentDomain.ProcessExit += (_, _) => server.Dispose();
        return server;
    }
}
