using System.Text;
using System.Text.Json;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Access;

/// <summary>
/// Keeps who may open the shop in <c>access.json</c>, readable by the owner of the data folder alone. It is read once and held;
/// a change is on the disk, whole, before it counts. The folder's lock says that no other program changes it.
/// </summary>
internal sealed class AccessFile(DataFolder folder)
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly Lock gate = new();
    private AccessDocument? held;

    /// <summary>What is kept.</summary>
    /// <exception cref="ShopStartException">The file cannot be read.</exception>
    public AccessDocument Now
    {
        get
        {
            lock (gate)
                return held ??= Read();
        }
    }

    /// <summary>Changes it, or refuses with a fault; one change at a time.</summary>
    /// <param name="change">Returns what is to be kept and the answer, or a fault.</param>
    public Outcome<T> Change<T>(Func<AccessDocument, (AccessDocument Kept, Outcome<T> Answer)> change)
        where T : class
    {
        lock (gate)
        {
            var (kept, answer) = change(Now);
            if (!answer.Ok)
                return answer;
            try
            {
                Write(kept);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                return Outcome.Faulty<T>(
                    new Fault("", "", "Nothing was changed: " + problem.Message.ReplaceLineEndings(" ").TrimEnd('.'))
                );
            }

            held = kept;
            return answer;
        }
    }

    private AccessDocument Read()
    {
        try
        {
            var kept = ShopJson.Read<AccessDocument>(File.ReadAllText(folder.Access));
            return kept.Format == AccessDocument.ThisFormat && !kept.Devices.IsDefault && !kept.Shares.IsDefault
                ? kept
                : throw new InvalidDataException(
                    $"its format is {kept.Format}, and this program knows {AccessDocument.ThisFormat}"
                );
        }
        catch (FileNotFoundException)
        {
            return AccessDocument.Empty;
        }
        catch (Exception problem)
            when (problem is JsonException or InvalidDataException or IOException or UnauthorizedAccessException)
        {
            throw new ShopStartException(
                $"{folder.Access} cannot be read: {problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}. It says who may open "
                    + "the shop. Mend it, or remove it: then make the owner's account and pair tablets again.",
                problem
            );
        }
    }

    private void Write(AccessDocument kept)
    {
        var part = folder.Access + ".part";
        File.Delete(part);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerOnly;
        using (var stream = new FileStream(part, options))
        {
            stream.Write(Encoding.UTF8.GetBytes(ShopJson.Write(kept)));
            stream.Flush(flushToDisk: true);
        }

        File.Move(part, folder.Access, overwrite: true);
    }
}
