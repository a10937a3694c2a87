using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class Beginning : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Commands",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Asked = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Made = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Commands", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Counters",
                columns: table => new
                {
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Last = table.Column<long>(type: "bigint", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Counters", x => x.Name);
                }
            );

            migrationBuilder.CreateTable(
                name: "Facts",
                columns: table => new
                {
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Value = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Facts", x => x.Name);
                }
            );

            migrationBuilder.CreateTable(
                name: "Materials",
                columns: table => new
                {
                    Id = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    NameKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Form = table.Column<int>(type: "integer", nullable: false),
                    Thickness = table.Column<long>(type: "bigint", nullable: false),
                    Width = table.Column<long>(type: "bigint", nullable: true),
                    Tint = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Source = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Own = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Materials", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "OwnDesigns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Document = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    SavedUtc = table.Column<long>(type: "bigint", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OwnDesigns", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "PlanJobs",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    State = table.Column<int>(type: "integer", nullable: false),
                    OrderJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Seconds = table.Column<int>(type: "integer", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: true),
                    FaultsJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanJobs", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Plans",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    MadeUtc = table.Column<long>(type: "bigint", nullable: false),
                    State = table.Column<int>(type: "integer", nullable: false),
                    Status = table.Column<int>(type: "integer", nullable: false),
                    Cost = table.Column<long>(type: "bigint", nullable: false),
                    Stocks = table.Column<int>(type: "integer", nullable: false),
                    Cuts = table.Column<int>(type: "integer", nullable: false),
                    ToBuy = table.Column<int>(type: "integer", nullable: false),
                    OrderJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    RequestJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    PlanJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    NamesJson = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    RequestHash = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    PlannerVersion = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WithdrawnWith = table.Column<Guid>(type: "uuid", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plans", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Projects",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Code = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Unit = table.Column<int>(type: "integer", nullable: false),
                    IsArchived = table.Column<bool>(type: "boolean", nullable: false),
                    SetState = table.Column<int>(type: "integer", nullable: true),
                    SetFrom = table.Column<int>(type: "integer", nullable: false),
                    SetBuild = table.Column<int>(type: "integer", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    MadeUtc = table.Column<long>(type: "bigint", nullable: false),
                    DeletedUtc = table.Column<long>(type: "bigint", nullable: true),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Projects", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Shop",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false),
                    Unit = table.Column<int>(type: "integer", nullable: false),
                    Kerf = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    BoardEndTrim = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    SheetEdgeTrim = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeepBoardLength = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeepSheetLength = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeepSheetWidth = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WidestRip = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    LongestCrosscut = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    HasTableSaw = table.Column<bool>(type: "boolean", nullable: false),
                    HasGuideSaw = table.Column<bool>(type: "boolean", nullable: false),
                    GuideKerf = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    HasMiterSaw = table.Column<bool>(type: "boolean", nullable: false),
                    MiterKerf = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    MiterCrosscut = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    HasHandSaw = table.Column<bool>(type: "boolean", nullable: false),
                    HandKerf = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CarryLongest = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CarryWidest = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Paper = table.Column<int>(type: "integer", nullable: false),
                    CurrencySign = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    PlanSeconds = table.Column<int>(type: "integer", nullable: false),
                    SetupCards = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shop", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Stores",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    NameKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Unit = table.Column<int>(type: "integer", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    FirstCuts = table.Column<int>(type: "integer", nullable: false),
                    CutTolerance = table.Column<long>(type: "bigint", nullable: false),
                    TripCost = table.Column<long>(type: "bigint", nullable: false),
                    TripMinutes = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Stores", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Turns",
                columns: table => new
                {
                    Sender = table.Column<Guid>(type: "uuid", nullable: false),
                    Subject = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Turns", x => new { x.Sender, x.Subject });
                }
            );

            migrationBuilder.CreateTable(
                name: "Weekends",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Weekends", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Pieces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Tag = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    MaterialId = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Pieces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Pieces_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "CutTicks",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Layout = table.Column<int>(type: "integer", nullable: false),
                    Copy = table.Column<int>(type: "integer", nullable: false),
                    Cut = table.Column<int>(type: "integer", nullable: false),
                    Made = table.Column<bool>(type: "boolean", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_CutTicks",
                        x => new
                        {
                            x.PlanId,
                            x.Layout,
                            x.Copy,
                            x.Cut,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_CutTicks_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "PlanComparisons",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanComparisons", x => x.PlanId);
                    table.ForeignKey(
                        name: "FK_PlanComparisons_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "PlanParts",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    RowId = table.Column<Guid>(type: "uuid", nullable: false),
                    MaterialId = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Length = table.Column<long>(type: "bigint", nullable: false),
                    Width = table.Column<long>(type: "bigint", nullable: false),
                    Pieces = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanParts", x => new { x.PlanId, x.RowId });
                    table.ForeignKey(
                        name: "FK_PlanParts_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "WrongCuts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Layout = table.Column<int>(type: "integer", nullable: false),
                    Copy = table.Column<int>(type: "integer", nullable: false),
                    Cut = table.Column<int>(type: "integer", nullable: false),
                    Reason = table.Column<int>(type: "integer", nullable: false),
                    IsTickedByIt = table.Column<bool>(type: "boolean", nullable: false),
                    LastPlan = table.Column<long>(type: "bigint", nullable: false),
                    RestPlanId = table.Column<Guid>(type: "uuid", nullable: true),
                    Standing = table.Column<bool>(type: "boolean", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WrongCuts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WrongCuts_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_WrongCuts_Plans_RestPlanId",
                        column: x => x.RestPlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "IdeaSteps",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    DocumentBefore = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ChangedBefore = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    DocumentAfter = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ChangedAfter = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Undone = table.Column<bool>(type: "boolean", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_IdeaSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_IdeaSteps_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "PartSteps",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Before = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    After = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Undone = table.Column<bool>(type: "boolean", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PartSteps_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Parts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<long>(type: "bigint", nullable: false),
                    Mark = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Material = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Length = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Width = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Quantity = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CanTurn = table.Column<bool>(type: "boolean", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    LongBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WideBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Practice = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Parts_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "PlanProjects",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Build = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanProjects", x => new { x.PlanId, x.ProjectId });
                    table.ForeignKey(
                        name: "FK_PlanProjects_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_PlanProjects_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "ProjectIdeas",
                columns: table => new
                {
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Changed = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Made = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProjectIdeas", x => x.ProjectId);
                    table.ForeignKey(
                        name: "FK_ProjectIdeas_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "ProjectSupplies",
                columns: table => new
                {
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Amount = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Own = table.Column<bool>(type: "boolean", nullable: false),
                    Price = table.Column<long>(type: "bigint", nullable: true),
                    Bought = table.Column<bool>(type: "boolean", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProjectSupplies", x => new { x.ProjectId, x.Key });
                    table.ForeignKey(
                        name: "FK_ProjectSupplies_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "ProjectWork",
                columns: table => new
                {
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProjectWork", x => x.ProjectId);
                    table.ForeignKey(
                        name: "FK_ProjectWork_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "ProjectWorkings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Form = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Given = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Unit = table.Column<int>(type: "integer", nullable: false),
                    Result = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeptUtc = table.Column<long>(type: "bigint", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ProjectWorkings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ProjectWorkings_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "WorkChanges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ProjectId = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    Title = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Before = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    After = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Undone = table.Column<bool>(type: "boolean", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WorkChanges", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WorkChanges_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Prices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    StoreId = table.Column<Guid>(type: "uuid", nullable: false),
                    MaterialId = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Length = table.Column<long>(type: "bigint", nullable: false),
                    Width = table.Column<long>(type: "bigint", nullable: false),
                    Price = table.Column<long>(type: "bigint", nullable: false),
                    InStock = table.Column<bool>(type: "boolean", nullable: false),
                    Seen = table.Column<DateOnly>(type: "date", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Prices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Prices_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Prices_Stores_StoreId",
                        column: x => x.StoreId,
                        principalTable: "Stores",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Promises",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Active = table.Column<bool>(type: "boolean", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Promises", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Promises_Pieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Promises_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Finishes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Layout = table.Column<int>(type: "integer", nullable: false),
                    Copy = table.Column<int>(type: "integer", nullable: false),
                    Standing = table.Column<bool>(type: "boolean", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WrongCutId = table.Column<Guid>(type: "uuid", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Finishes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Finishes_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Finishes_WrongCuts_WrongCutId",
                        column: x => x.WrongCutId,
                        principalTable: "WrongCuts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "WrongPieces",
                columns: table => new
                {
                    WrongCutId = table.Column<Guid>(type: "uuid", nullable: false),
                    Piece = table.Column<int>(type: "integer", nullable: false),
                    RowId = table.Column<Guid>(type: "uuid", nullable: false),
                    IsPractice = table.Column<bool>(type: "boolean", nullable: false),
                    LeftPieceId = table.Column<Guid>(type: "uuid", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WrongPieces", x => new { x.WrongCutId, x.Piece });
                    table.ForeignKey(
                        name: "FK_WrongPieces_Pieces_LeftPieceId",
                        column: x => x.LeftPieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_WrongPieces_WrongCuts_WrongCutId",
                        column: x => x.WrongCutId,
                        principalTable: "WrongCuts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "LeftOut",
                columns: table => new
                {
                    FinishId = table.Column<Guid>(type: "uuid", nullable: false),
                    RowId = table.Column<Guid>(type: "uuid", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Pieces = table.Column<int>(type: "integer", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LeftOut", x => new { x.FinishId, x.RowId });
                    table.ForeignKey(
                        name: "FK_LeftOut_Finishes_FinishId",
                        column: x => x.FinishId,
                        principalTable: "Finishes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Purchases",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    PlanId = table.Column<Guid>(type: "uuid", nullable: false),
                    Stock = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Place = table.Column<int>(type: "integer", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    Price = table.Column<long>(type: "bigint", nullable: false),
                    Store = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    FinishId = table.Column<Guid>(type: "uuid", nullable: true),
                    Standing = table.Column<bool>(type: "boolean", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Purchases", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Purchases_Finishes_FinishId",
                        column: x => x.FinishId,
                        principalTable: "Finishes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Purchases_Pieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Purchases_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "StockLedger",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Number = table.Column<long>(type: "bigint", nullable: false),
                    PieceId = table.Column<Guid>(type: "uuid", nullable: false),
                    WhenUtc = table.Column<long>(type: "bigint", nullable: false),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Count = table.Column<int>(type: "integer", nullable: false),
                    Length = table.Column<long>(type: "bigint", nullable: false),
                    Width = table.Column<long>(type: "bigint", nullable: false),
                    Untrimmed = table.Column<int>(type: "integer", nullable: false),
                    BadPlaces = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Reason = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Device = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Undoes = table.Column<Guid>(type: "uuid", nullable: true),
                    FinishId = table.Column<Guid>(type: "uuid", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StockLedger", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StockLedger_Finishes_FinishId",
                        column: x => x.FinishId,
                        principalTable: "Finishes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_StockLedger_Pieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_Finishes_PlanId_Layout_Copy",
                table: "Finishes",
                columns: new[] { "PlanId", "Layout", "Copy" },
                unique: true,
                filter: "\"Standing\""
            );

            migrationBuilder.CreateIndex(name: "IX_Finishes_WrongCutId", table: "Finishes", column: "WrongCutId");

            migrationBuilder.CreateIndex(
                name: "IX_IdeaSteps_ProjectId_Number",
                table: "IdeaSteps",
                columns: new[] { "ProjectId", "Number" },
                unique: true
            );

            migrationBuilder.CreateIndex(name: "IX_LeftOut_PlanId", table: "LeftOut", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_Materials_NameKey", table: "Materials", column: "NameKey", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PartSteps_ProjectId_Number",
                table: "PartSteps",
                columns: new[] { "ProjectId", "Number" },
                unique: true
            );

            migrationBuilder.CreateIndex(
                name: "IX_Parts_ProjectId_Position",
                table: "Parts",
                columns: new[] { "ProjectId", "Position" }
            );

            migrationBuilder.CreateIndex(name: "IX_Pieces_MaterialId", table: "Pieces", column: "MaterialId");

            migrationBuilder.CreateIndex(name: "IX_Pieces_Tag", table: "Pieces", column: "Tag", unique: true);

            migrationBuilder.CreateIndex(name: "IX_PlanJobs_Number", table: "PlanJobs", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_PlanProjects_ProjectId", table: "PlanProjects", column: "ProjectId");

            migrationBuilder.CreateIndex(name: "IX_Plans_Number", table: "Plans", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Prices_MaterialId", table: "Prices", column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_StoreId_MaterialId_Length_Width",
                table: "Prices",
                columns: new[] { "StoreId", "MaterialId", "Length", "Width" },
                unique: true
            );

            migrationBuilder.CreateIndex(
                name: "IX_ProjectWorkings_ProjectId_KeptUtc",
                table: "ProjectWorkings",
                columns: new[] { "ProjectId", "KeptUtc" }
            );

            migrationBuilder.CreateIndex(name: "IX_Projects_Code", table: "Projects", column: "Code", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Projects_Number", table: "Projects", column: "Number", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Promises_PieceId",
                table: "Promises",
                column: "PieceId",
                unique: true,
                filter: "\"Active\""
            );

            migrationBuilder.CreateIndex(name: "IX_Promises_PlanId", table: "Promises", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_Purchases_FinishId", table: "Purchases", column: "FinishId");

            migrationBuilder.CreateIndex(name: "IX_Purchases_PieceId", table: "Purchases", column: "PieceId", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Purchases_PlanId_Stock_Place",
                table: "Purchases",
                columns: new[] { "PlanId", "Stock", "Place" },
                unique: true,
                filter: "\"Standing\""
            );

            migrationBuilder.CreateIndex(name: "IX_StockLedger_FinishId", table: "StockLedger", column: "FinishId");

            migrationBuilder.CreateIndex(name: "IX_StockLedger_Number", table: "StockLedger", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_StockLedger_PieceId", table: "StockLedger", column: "PieceId");

            migrationBuilder.CreateIndex(name: "IX_StockLedger_Undoes", table: "StockLedger", column: "Undoes", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Stores_NameKey", table: "Stores", column: "NameKey", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WorkChanges_ProjectId_Number",
                table: "WorkChanges",
                columns: new[] { "ProjectId", "Number" },
                unique: true
            );

            migrationBuilder.CreateIndex(name: "IX_WrongCuts_PlanId", table: "WrongCuts", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_WrongCuts_RestPlanId", table: "WrongCuts", column: "RestPlanId");

            migrationBuilder.CreateIndex(name: "IX_WrongPieces_LeftPieceId", table: "WrongPieces", column: "LeftPieceId");

            migrationBuilder.CreateIndex(name: "IX_WrongPieces_RowId", table: "WrongPieces", column: "RowId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "Commands");

            migrationBuilder.DropTable(name: "Counters");

            migrationBuilder.DropTable(name: "CutTicks");

            migrationBuilder.DropTable(name: "Facts");

            migrationBuilder.DropTable(name: "IdeaSteps");

            migrationBuilder.DropTable(name: "LeftOut");

            migrationBuilder.DropTable(name: "OwnDesigns");

            migrationBuilder.DropTable(name: "PartSteps");

            migrationBuilder.DropTable(name: "Parts");

            migrationBuilder.DropTable(name: "PlanComparisons");

            migrationBuilder.DropTable(name: "PlanJobs");

            migrationBuilder.DropTable(name: "PlanParts");

            migrationBuilder.DropTable(name: "PlanProjects");

            migrationBuilder.DropTable(name: "Prices");

            migrationBuilder.DropTable(name: "ProjectIdeas");

            migrationBuilder.DropTable(name: "ProjectSupplies");

            migrationBuilder.DropTable(name: "ProjectWork");

            migrationBuilder.DropTable(name: "ProjectWorkings");

            migrationBuilder.DropTable(name: "Promises");

            migrationBuilder.DropTable(name: "Purchases");

            migrationBuilder.DropTable(name: "Shop");

            migrationBuilder.DropTable(name: "StockLedger");

            migrationBuilder.DropTable(name: "Turns");

            migrationBuilder.DropTable(name: "Weekends");

            migrationBuilder.DropTable(name: "WorkChanges");

            migrationBuilder.DropTable(name: "WrongPieces");

            migrationBuilder.DropTable(name: "Stores");

            migrationBuilder.DropTable(name: "Finishes");

            migrationBuilder.DropTable(name: "Projects");

            migrationBuilder.DropTable(name: "Pieces");

            migrationBuilder.DropTable(name: "WrongCuts");

            migrationBuilder.DropTable(name: "Materials");

            migrationBuilder.DropTable(name: "Plans");
        }
    }
}
