using Microsoft.Data.Sqlite;

namespace ShopPlanner.Services.Storage;

/// <summary>Reads a shop's database with its write-ahead log, and changes nothing in it.</summary>
internal static class LiveFile
{
    /// <summary>Opens it for reading.</summary>
    public static SqliteConnection OpenForReading(string file)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = file,
                Mode = SqliteOpenMode.ReadOnly,
                Pooling = false,
            }.ToString()
        );
        connection.Open();
        return connection;
    }

    /// <summary>Checks every page and every reference.</summary>
    /// <returns>What is wrong, to be read after the file's name; null where it is whole.</returns>
    public static string? Fault(string file)
    {
        if (!File.Exists(file))
            return "isn't there";
        if (CopyFile.QuickFault(file, countsPages: false) is { } wrong)
            return wrong;
        try
        {
            using var connection = OpenForReading(file);
            return CopyFile.InnerFault(connection);
        }
        catch (SqliteException problem)
        {
            return CopyFile.Damaged(problem.Message);
        }
    }
}
