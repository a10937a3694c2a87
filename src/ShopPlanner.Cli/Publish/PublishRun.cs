using System.Collections.Immutable;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Documents;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Publishing;

namespace ShopPlanner.Cli.Publish;

/// <summary>What is asked of a publication, as typed.</summary>
internal sealed record PublishOptions(string? License, string By, string Title, string? Paper, IReadOnlyList<string> Photos);

/// <summary>One run of the command: read, make the files, write them.</summary>
internal static class PublishRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, string to, IReadOnlyList<string> set, PublishOptions options)
    {
        var target = FolderOutput.At(to, "publication");
        var changed = DesignChanges.Of(set);
        var (license, paper) = (LicenseOf(options.License), PaperOf(options.Paper));
        var photos = options.Photos.Select(PhotoOf).ToImmutableArray();
        if (photos.Length > CleanPhoto.Most)
            throw new Complaint($"--photo: {photos.Length} are too many: at most {CleanPhoto.Most}");
        foreach (var (name, text) in new[] { ("--by", options.By), ("--title", options.Title) })
            if (text.Length > PublicationWriter.MostCharacters || text.Any(char.IsControl))
                throw new Complaint($"{name}: write one line of at most {PublicationWriter.MostCharacters} characters");
        var (document, faults) = DesignInput.Read(from);
        if (document is null)
            return DesignInput.Refused(faults, changed);
        if (DesignEvaluator.Evaluate(document, changed) is { Piece: null } evaluation)
            return DesignInput.Refused(evaluation.Faults, changed);
        var day = DateOnly.FromDateTime(DateTime.Now);
        var (publication, refusals) = PublicationWriter.Write(
            new PublishAsked(document.WithValues(changed), license, day)
            {
                Title = options.Title,
                By = options.By,
                Paper = paper,
                Photos = photos,
            }
        );
        if (publication is null)
            return DesignInput.Refused(refusals, changed);
        target.Write(publication, day);
        return ExitStatus.Done;
    }

    private static PublishLicense LicenseOf(string? id) =>
        id is null
            ? PublishLicense.Reserved
            : PublishLicense.Find(id)
                ?? throw new Complaint($"--license: '{id}' is not known: write one of {PublishCommand.Licenses}");

    private static PaperSize PaperOf(string? text) =>
        text?.ToLowerInvariant() switch
        {
            null or "letter" => PaperSize.Letter,
            "a4" => PaperSize.A4,
            _ => throw new Complaint($"--paper: '{text}' is not a paper size: write letter or a4"),
        };

    private static CleanPhoto PhotoOf(string file)
    {
        var bytes = DocumentInput.Read(file, "photo", stream => CappedReading.Take(stream, CleanPhoto.MostBytes));
        var (photo, fault) = CleanPhoto.Of(Path.GetFileName(file), bytes);
        return photo ?? throw new Complaint(fault!.ToString());
    }
}
