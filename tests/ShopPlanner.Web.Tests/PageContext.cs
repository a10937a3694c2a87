using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using MudBlazor.Services;
using ShopPlanner.Web.Look;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests;

/// <summary>Renders parts of pages without a browser.</summary>
public abstract class PageContext : BunitContext
{
    protected PageContext()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices();
        Services.AddScoped<Notices>();
        Services.AddScoped<LookState>();
        Services.AddSingleton(TimeProvider.System);
        Services.AddSingleton<IWebHostEnvironment>(new NoFiles());
        Services.AddSingleton<IconShelf>();
    }

    /// <summary>The input with this name, as people who cannot see the page find it.</summary>
    protected static IElement Named<T>(IRenderedComponent<T> page, string name)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        page.FindAll("input, select, button")
            .Single(element =>
                element.GetAttribute("aria-label") == name || element.TextContent.Trim() == name || LabelOf(page, element) == name
            );

    private static string? LabelOf<T>(IRenderedComponent<T> page, IElement element)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        element.Id is { Length: > 0 } id
            ? page.FindAll("label").FirstOrDefault(label => label.GetAttribute("for") == id)?.TextContent
            : null;

    private sealed class NoFiles : IWebHostEnvironment
    {
        public string WebRootPath { get; set; } = "";

        public IFileProvider WebRootFileProvider { get; set; } = new Icons();

        public string ApplicationName { get; set; } = "";

        public IFileProvider ContentRootFileProvider { get; set; } = new NullFileProvider();

        public string ContentRootPath { get; set; } = "";

        public string EnvironmentName { get; set; } = "";
    }

    private sealed class Icons : IFileProvider
    {
        public IDirectoryContents GetDirectoryContents(string subpath) => NotFoundDirectoryContents.Singleton;

        public IFileInfo GetFileInfo(string subpath) => new Blank(subpath);

        public Microsoft.Extensions.Primitives.IChangeToken Watch(string filter) => NullChangeToken.Singleton;
    }

    private sealed class Blank(string name) : IFileInfo
    {
        public bool Exists => true;

        public bool IsDirectory => false;

        public DateTimeOffset LastModified => default;

        public long Length => 0;

        public string Name => name;

        public string? PhysicalPath => null;

        public Stream CreateReadStream() => new MemoryStream("<svg></svg>"u8.ToArray());
    }
}
