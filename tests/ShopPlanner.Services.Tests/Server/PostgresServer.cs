using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Npgsql;

namespace ShopPlanner.Services.Tests.Server;

/// <summary>A PostgreSQL server of the tests' own, in a temporary folder and reached by a socket there. Its programs are those of
/// Debian's package.</summary>
internal sealed class PostgresServer : IDisposable
{
    private const string Packaged = "/usr/lib/postgresql",
        User = "postgres";

    // What a power cut does to most shops of the tests nobody minds.
    private static readonly string[] Quick = ["fsync=off", "full_page_writes=off", "synchronous_commit=off"];
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private static readonly Lazy<string?> Programs = new(FindPrograms);

    private readonly ConcurrentQueue<string?> said = new();
    private readonly string place = Directory.CreateTempSubdirectory("shop-planner-pg-").FullName;
    private readonly bool isDurable;
    private Process? server;

    /// <param name="isDurable">Whether what it acknowledged outlives its end.</param>
    public PostgresServer(bool isDurable)
    {
        this.isDurable = isDurable;
        if (Environment.IsPrivilegedProcess)
            Run(Process.Start("chown", [User, place]));
        Run(Begin("initdb", "-D", Data, "-U", User, "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync"));
        Start();
    }

    /// <summary>Why there is none; null where there is one.</summary>
    public static string? Missing =>
        Programs.Value is null ? "There is no PostgreSQL here: install Debian's package 'postgresql'." : null;

    private string Data => Path.Combine(place, "data");

    /// <summary>The connection to one of its databases.</summary>
    public string To(string database) =>
        new NpgsqlConnectionStringBuilder
        {
            Host = place,
            Database = database,
            Username = User,
            MaxPoolSize = 20,
            Timeout = (int)Patience.TotalSeconds,
            CommandTimeout = (int)Patience.TotalSeconds,
        }.ToString();

    /// <summary>Does something with no database in particular.</summary>
    public void Ask(string sql)
    {
        using var open = new NpgsqlConnection(To(User));
        open.Open();
        using var command = new NpgsqlCommand(sql, open);
        command.ExecuteNonQuery();
    }

    /// <summary>Ends it with all its helpers at once, as a crash does.</summary>
    public void Kill()
    {
        server!.Kill(entireProcessTree: true);
        server.WaitForExit();
        NpgsqlConnection.ClearAllPools();
        // Where nobody buries the dead, their numbers in these look like a server that still runs.
        File.Delete(Path.Combine(Data, "postmaster.pid"));
        foreach (var socket in Directory.EnumerateFiles(place, ".s.PGSQL.*"))
            File.Delete(socket);
    }

    /// <summary>Starts it on its data.</summary>
    public void Start()
    {
        string[] here = ["listen_addresses=", $"unix_socket_directories={place}", "max_connections=200", "shared_buffers=32MB"];
        var settings = here.Concat(isDurable ? [] : Quick).SelectMany(one => new[] { "-c", one });
        server = Begin("postgres", ["-D", Data, .. settings]);
        // What it says is read, or it would wait for that.
        server.ErrorDataReceived += (_, line) => said.Enqueue(line.Data);
        server.OutputDataReceived += (_, line) => said.Enqueue(line.Data);
        server.BeginErrorReadLine();
        server.BeginOutputReadLine();
        for (var clock = Stopwatch.StartNew(); !Answers(); Thread.Sleep(50))
            if (server.HasExited || clock.Elapsed > Patience)
                throw new InvalidOperationException("The database server did not start: " + string.Join('\n', said));
    }

    public void Dispose()
    {
        if (!server!.HasExited)
            Kill();
        server.Dispose();
        Directory.Delete(place, recursive: true);
    }

    private bool Answers()
    {
        try
        {
            using var open = new NpgsqlConnection(To(User) + ";Pooling=False");
            open.Open();
            return true;
        }
        catch (NpgsqlException)
        {
            // Not yet.
            return false;
        }
    }

    private static string? FindPrograms() =>
        Directory.Exists(Packaged)
            ? Directory
                .EnumerateDirectories(Packaged)
                .Select(version => Path.Combine(version, "bin"))
                .Where(bin => File.Exists(Path.Combine(bin, "initdb")))
                .Max(StringComparer.Ordinal)
            : null;

    // The server refuses to run as root.
    private static Process Begin(string program, params string[] given)
    {
        var path = Path.Combine(Programs.Value!, program);
        string[] all = Environment.IsPrivilegedProcess ? ["runuser", "-u", User, "--", path, .. given] : [path, .. given];
        return Process.Start(
            new ProcessStartInfo(all[0], all[1..])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
                WorkingDirectory = "/",
            }
        )!;
    }

    private static void Run(Process program)
    {
        var errors = program.StartInfo.RedirectStandardError ? program.StandardError.ReadToEnd() : "";
        program.WaitForExit();
        if (program.ExitCode != 0)
            throw new InvalidOperationException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{program.StartInfo.FileName} ended with {program.ExitCode}: {errors}"
                )
            );
    }
}
